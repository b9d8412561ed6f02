import type { InputFile } from './input-file.ts'
import type { Machine } from './machine.ts'

/** The files with the machine's data, by their paths from the machine folder: the release names their revisions. */
export function dataFiles({ file, inputs }: Machine): InputFile[] {
  const named = new Set(['machine.yaml', 'training.yaml', ...Object.values(file.data).flatMap((entry) => entry?.file ?? [])])
  return inputs.flatMap(({ path, sha256 }) => {
    const own = path.replace(/^machine\//, '')
    return own !== path && named.has(own) ? [{ path: own, sha256 }] : []
  })
}
