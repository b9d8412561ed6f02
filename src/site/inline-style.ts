import { createRequire } from 'node:module'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { bundling } from './bundling.ts'
import { fonts } from './fonts.ts'

/** A style sheet of `styles/` as one text with its fonts in it, for a page that is a single file. */
export async function inlineStyle(name: string): Promise<string> {
  const require = createRequire(import.meta.url)
  const { outputFiles } = await build({
    ...bundling,
    entryPoints: [fileURLToPath(new URL(`styles/${name}`, import.meta.url))],
    write: false,
    loader: { '.woff2': 'dataurl' },
    plugins: [
      {
        name: 'fonts',
        setup: ({ onResolve }) => onResolve({ filter: /\.woff2$/ }, ({ path }) => ({ path: require.resolve(fonts[basename(path)] ?? path) })),
      },
    ],
  })
  return outputFiles.map(({ text }) => text).join('')
}
