import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { jsonSchemas } from '../model/json-schemas.ts'
import type { Options } from './options.ts'

export async function run({ words: [folder = '.'] }: Options): Promise<number> {
  const dir = join(folder, 'schema')
  mkdirSync(dir, { recursive: true })
  for (const [name, text] of jsonSchemas()) {
    writeFileSync(join(dir, name), text)
    process.stdout.write(`${join(dir, name)}\n`)
  }
  return 0
}
