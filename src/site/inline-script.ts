import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

/** A script of `scripts/` as one classic script, for a page that is a single file. `target`: the oldest engine it is lowered for. */
export async function inlineScript(name: string, target?: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(`scripts/${name}`, import.meta.url))],
    bundle: true,
    format: 'iife',
    write: false,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'silent',
    ...(target === undefined ? {} : { target, minify: true }),
  })
  return outputFiles.map(({ text }) => text).join('')
}
