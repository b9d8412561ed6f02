import { mkdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration, AstroPrerenderer, RouteData } from 'astro'
import { handOver, type SiteInput } from './handover.ts'
import { routeOf } from './route.ts'

const source = fileURLToPath(new URL('.', import.meta.url))

/** Lets bodies that are rendered as a tree use the `.astro` elements. */
const jsxRenderer: AstroIntegration = {
  name: 'fettle-jsx',
  hooks: { 'astro:config:setup': ({ addRenderer }) => addRenderer({ name: 'astro:jsx', serverEntrypoint: '@astrojs/mdx/server.js' }) },
}

/**
 * Renders the pages into `outDir`. `workDir` must lie below the `node_modules` that holds Astro: the server
 * bundle is written there and finds its packages from there. Changes the working directory while it runs.
 */
export async function renderSite(input: SiteInput, outDir: string, workDir: string): Promise<void> {
  handOver(input)
  await runAstro(outDir, workDir)
  for (const { path } of input.pages) if (routeOf(path) !== path) renameSync(join(outDir, routeOf(path)), join(outDir, path))
}

/** Makes the HTML of a page of what was handed over last. */
export type RenderPage = (path: string) => Promise<string>

/**
 * The pages of a site one by one, for as long as the process runs: for a preview, where a page is made when it is looked
 * at. A machine that is handed over later is shown, as long as its pages have the same paths.
 */
export async function openPages(input: SiteInput, workDir: string): Promise<RenderPage> {
  handOver(input)
  let render: AstroPrerenderer['render'] | undefined
  const routes = new Map<string, RouteData>()
  await runAstro(join(workDir, 'out'), workDir, {
    name: 'fettle-page-by-page',
    hooks: {
      'astro:build:start': ({ setPrerenderer }) =>
        setPrerenderer((own) => {
          render = own.render
          const getStaticPaths = async () => {
            const all = await own.getStaticPaths()
            for (const { pathname, route } of all) routes.set(pathname, route)
            // Astro takes its bundle away at the end: one page is made while it is there, and has all of it loaded.
            return all.slice(0, 1)
          }
          return { ...own, getStaticPaths }
        }),
    },
  })
  return async (path) => {
    const routeData = routes.get(path === 'index.html' ? '/' : `/${routeOf(path).replace(/\.html$/, '')}`)
    if (!render || !routeData) throw new Error(`there is no page ${path}`)
    const made = await render(new Request(new URL(routeOf(path), 'http://localhost/')), { routeData })
    return await (made instanceof Response ? made : made.response).text()
  }
}

async function runAstro(outDir: string, workDir: string, ...integrations: AstroIntegration[]): Promise<void> {
  rmSync(workDir, { recursive: true, force: true })
  mkdirSync(workDir, { recursive: true })
  const cwd = process.cwd()
  process.chdir(workDir)
  process.env.ASTRO_TELEMETRY_DISABLED = '1'
  try {
    const { build } = await import('astro')
    await build({
      configFile: false,
      root: workDir,
      srcDir: source,
      publicDir: join(workDir, 'public'),
      outDir,
      cacheDir: join(workDir, 'cache'),
      build: { format: 'file', concurrency: 4 },
      trailingSlash: 'never',
      compressHTML: true,
      logLevel: 'warn',
      devToolbar: { enabled: false },
      integrations: [jsxRenderer, ...integrations],
      vite: { cacheDir: join(workDir, 'vite'), server: { fs: { allow: [source] } }, build: { emptyOutDir: false } },
    })
  } finally {
    process.chdir(cwd)
  }
}
