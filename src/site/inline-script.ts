import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { bundling } from './bundling.ts'

/** A script of `scripts/` as one classic script, for a page that is a single file. */
export async function inlineScript(name: string): Promise<string> {
  const entry = fileURLToPath(new URL(`scripts/${name}`, import.meta.url))
  const { outputFiles } = await build({ ...bundling, entryPoints: [entry], format: 'iife', write: false })
  return outputFiles.map(({ text }) => text).join('')
}
