import { rules } from '../../src/check/rules.ts'
import { checkLoaded } from '../../src/check/run.ts'
import { diskFolder, type Folder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Loaded } from '../../src/load/loaded.ts'
import type { DrawingTexts } from '../../src/load/pdf/drawing-texts.ts'
import type { Finding } from '../../src/source/finding.ts'

/** Every file of a machine by its path; shared content under `content/`. */
export type Files = ReadonlyMap<string, string | Uint8Array>

const shared = 'content/'

export function readFiles(machine: string, content: string): Files {
  const files = new Map<string, string | Uint8Array>()
  for (const [dir, label] of [
    [machine, ''],
    [content, shared],
  ] as const) {
    const folder = diskFolder(dir, label)
    for (const path of folder.list()) files.set(label + path, asText(folder.read(path)))
  }
  return files
}

function asText(bytes: Uint8Array): string | Uint8Array {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    // A slice of a buffer is no copy of it.
    return new Uint8Array(bytes)
  }
}

/** What the check says about files in memory, and the texts it read. */
export function checkFiles(files: Files): { findings: Finding[]; texts: ReadonlyMap<string, string> } {
  const loaded = loadFiles(files)
  return { findings: checkLoaded(loaded, rules), texts: loaded.texts }
}

/** The machine that files in memory make. */
export function loadFiles(files: Files, drawingTexts?: DrawingTexts): Loaded {
  const { machine, content } = foldersOf(files)
  return loadMachine(machine, content, undefined, drawingTexts)
}

/** Files in memory as the two folders that a check reads. */
export function foldersOf(files: Files): { machine: Folder; content: Folder } {
  const machine = new Map([...files].filter(([path]) => !path.startsWith(shared)))
  const content = new Map([...files].flatMap(([path, text]) => (path.startsWith(shared) ? [[path.slice(shared.length), text] as const] : [])))
  return { machine: memoryFolder(machine), content: memoryFolder(content, shared) }
}

export function textOf(files: Files, path: string): string {
  const content = files.get(path)
  if (typeof content !== 'string') throw new Error(`no text ${path}`)
  return content
}
