import type { InputFile } from '../model/input-file.ts'
import { compare, startOfFile } from '../source/place.ts'
import { reason } from './decode.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'

/** Every file of the two folders, with its hash. */
export function inputFiles(machine: Folder, shared: Folder, sink: Sink): InputFile[] {
  const hash = (folder: Folder, prefix: string) =>
    folder.list().flatMap((path): InputFile[] => {
      if ((folder.size(path) ?? 0) > 200_000_000) return []
      try {
        return [{ path: prefix + path, sha256: folder.sha256(path) }]
      } catch (error) {
        sink(loadRules.unreadableFile, {
          message: 'the file cannot be read',
          place: startOfFile(folder.label + path),
          note: reason(error),
        })
        return []
      }
    })
  return [...hash(machine, 'machine/'), ...hash(shared, 'content/')].sort((a, b) => compare(a.path, b.path))
}
