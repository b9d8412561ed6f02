import { diskFolder, memoryFolder } from '../src/load/folder.ts'
import { loadMachine } from '../src/load/load-machine.ts'
import type { Loaded } from '../src/load/loaded.ts'

/** Path to text of the files that differ from the sound machine; undefined takes a file away. */
export type Changes = ReadonlyMap<string, string | undefined>

const shared = 'content/'

/** The sound machine of `fixtures/` with some files changed. Files under `content/` are shared content. */
export function loadSound(changes: Changes = new Map()): Loaded {
  const folder = diskFolder('tests/fixtures/sound-machine', '')
  const machine = new Map<string, string | Uint8Array>(folder.list().map((path) => [path, folder.read(path)]))
  const content = new Map<string, string>()
  for (const [path, text] of changes) {
    if (text === undefined) machine.delete(path)
    else if (path.startsWith(shared)) content.set(path.slice(shared.length), text)
    else machine.set(path, text)
  }
  return loadMachine(memoryFolder(machine), memoryFolder(content, shared))
}
