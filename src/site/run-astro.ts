import { mkdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
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
  rmSync(workDir, { recursive: true, force: true })
  mkdirSync(workDir, { recursive: true })
  handOver(input)
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
      integrations: [jsxRenderer],
      vite: { cacheDir: join(workDir, 'vite'), server: { fs: { allow: [source] } }, build: { emptyOutDir: false } },
    })
    for (const { path } of input.pages) if (routeOf(path) !== path) renameSync(join(outDir, routeOf(path)), join(outDir, path))
  } finally {
    process.chdir(cwd)
  }
}
