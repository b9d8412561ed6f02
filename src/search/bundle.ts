import { fileURLToPath } from 'node:url'
import { type BuildOptions, build, type Plugin } from 'esbuild'
import { patchEngineScript } from './lower.ts'

/** Oldest browser that the lowered engine runs in; what needs a newer one must fail softly. */
const target = 'chrome75'

const options = {
  bundle: true,
  format: 'iife',
  target,
  minify: true,
  write: false,
  charset: 'ascii',
  legalComments: 'none',
  logLevel: 'silent',
} as const satisfies BuildOptions

/**
 * Our engine script and Pagefind's as one classic script. Pagefind reaches its files with `fetch`, its language
 * through `document`, and may start a worker of its own: imports of ours take the place of these.
 */
export async function bundleEngine(pagefindScript: string, pairs: readonly string[]): Promise<string> {
  const contents = [
    `import { readPacked as fetch, languageOnly as document, segmenting as Intl } from ${JSON.stringify(runtimeFile('packed-files.ts'))}`,
    'const Worker = undefined',
    patchEngineScript(pagefindScript, pairs),
  ].join('\n')
  const pagefind: Plugin = {
    name: 'pagefind',
    setup(build) {
      build.onResolve({ filter: /^pagefind-engine$/ }, ({ path }) => ({ path, namespace: 'pagefind' }))
      build.onLoad({ filter: /.*/, namespace: 'pagefind' }, () => ({ contents, loader: 'js', resolveDir: runtimeFile('.') }))
    },
  }
  return bundle({ ...options, entryPoints: [runtimeFile('engine.ts')], define: { 'import.meta.url': '"/"' }, plugins: [pagefind] })
}

/** The script that search pages load. */
export async function bundlePageScript(): Promise<string> {
  return bundle({ ...options, entryPoints: [runtimeFile('core.ts')] })
}

function runtimeFile(name: string): string {
  return fileURLToPath(new URL(`./runtime/${name}`, import.meta.url))
}

async function bundle(options: BuildOptions & { write: false }): Promise<string> {
  const [output] = (await build(options)).outputFiles ?? []
  if (!output) throw new Error('esbuild gave no script')
  return output.text
}
