import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runFettle } from '../cli/run-fettle.ts'

export interface BuiltMachine {
  /** The built folder. Its path holds a space, an accent and a `#`, as paths on sticks do. */
  dir: string
  remove(): void
}

/** Builds the sound machine without shared pages, with these files in place of its own or beside them: path -> content. */
export async function buildSoundMachine(files: Readonly<Record<string, string | Uint8Array>>): Promise<BuiltMachine> {
  const parent = mkdtempSync(join(tmpdir(), 'fettle-'))
  const [machine, content, dir] = ['machine', 'content', 'Stick Nº 1 #2'].map((name) => join(parent, name)) as [string, string, string]
  cpSync('tests/fixtures/sound-machine', machine, { recursive: true })
  mkdirSync(content)
  for (const [path, content] of Object.entries(files)) writeFileSync(join(machine, path), content)
  const { code, stdout, stderr } = await runFettle(['build', machine, '--shared', content, '--out', dir, '--no-zip'])
  if (code !== 0) throw new Error(`${stdout}${stderr}`)
  return { dir, remove: () => rmSync(parent, { recursive: true, force: true }) }
}
