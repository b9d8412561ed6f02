import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { compare } from '../source/place.ts'
import { manifestName, parseManifest } from './manifest.ts'

/** A built folder, and what its manifest says of the machine. */
export interface BuiltFolder {
  folder: string
  machine: Record<string, unknown>
}

/** The built folders that lie in a folder, by name. What holds no manifest of ours is no build, and hidden folders are being made. */
export function builtBelow(dir: string): BuiltFolder[] {
  return readdirSync(dir, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .flatMap(({ name }) => {
      const machine = machineOf(join(dir, name))
      return machine ? [{ folder: name, machine }] : []
    })
    .sort((a, b) => compare(a.folder, b.folder))
}

/** What the manifest of a built folder says of its machine; undefined where the folder is no build. */
export function machineOf(dir: string): Record<string, unknown> | undefined {
  let text: string
  try {
    text = readFileSync(join(dir, manifestName), 'utf8')
  } catch {
    return undefined // A folder of somebody else.
  }
  const parsed = parseManifest(text)
  return 'problem' in parsed ? undefined : parsed.manifest.machine
}
