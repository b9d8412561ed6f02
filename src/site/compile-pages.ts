import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { AstroIntegration } from 'astro'
import type { SitePage } from './site-map.ts'

const source = fileURLToPath(new URL('.', import.meta.url))

/** Lets bodies that are rendered as a tree use the `.astro` elements. */
const jsxRenderer: AstroIntegration = {
  name: 'fettle-jsx',
  hooks: { 'astro:config:setup': ({ addRenderer }) => addRenderer({ name: 'astro:jsx', serverEntrypoint: '@astrojs/mdx/server.js' }) },
}

/** Our own server of pages: it is asked by functions, and listens on nothing. */
const pageServer: AstroIntegration = {
  name: 'fettle-page-server',
  hooks: {
    'astro:config:done': ({ setAdapter }) =>
      setAdapter({
        name: 'fettle-page-server',
        entrypointResolution: 'auto',
        serverEntrypoint: new URL('./page-server.ts', import.meta.url),
        supportedAstroFeatures: { serverOutput: 'stable', sharpImageService: 'stable' },
      }),
  },
}

/**
 * Compiles the views of the site into `dir`, an empty folder below the `node_modules` that holds Astro, since what is compiled finds its packages
 * from there. It knows no machine. Changes the working directory while it runs.
 */
export async function compilePages(dir: string): Promise<void> {
  const cwd = process.cwd()
  process.chdir(dir)
  process.env.ASTRO_TELEMETRY_DISABLED = '1'
  try {
    const { build } = await import('astro')
    await build({
      configFile: false,
      root: dir,
      srcDir: source,
      publicDir: join(dir, 'public'),
      outDir: join(dir, 'out'),
      cacheDir: join(dir, 'cache'),
      output: 'server',
      trailingSlash: 'ignore',
      compressHTML: true,
      logLevel: 'warn',
      devToolbar: { enabled: false },
      adapter: pageServer,
      integrations: [jsxRenderer],
      vite: { cacheDir: join(dir, 'vite'), server: { fs: { allow: [source] } } },
    })
    for (const rest of ['cache', 'vite', 'out/client']) rmSync(join(dir, rest), { recursive: true, force: true })
  } finally {
    process.chdir(cwd)
  }
}

/** Makes the HTML of a page of what was handed over last. */
export type RenderPage = (page: SitePage) => Promise<string>

/** Opens what `compilePages` has written into `dir`. */
export async function openPages(dir: string): Promise<RenderPage> {
  const { renderPage }: { renderPage: RenderPage } = await import(pathToFileURL(join(dir, 'out/server/entry.mjs')).href)
  return renderPage
}
