import type { Folder } from './folder.ts'

const isImage = (path: string) => /\.(svg|png|jpe?g|webp)$/i.test(path)

/** Pictures that pages may show: path from the machine folder or from `content/` -> file on disk. */
export function images(machine: Folder, shared: Folder): Map<string, string> {
  const found = new Map<string, string>()
  for (const folder of [shared, machine]) for (const path of folder.list().filter(isImage)) found.set(path, folder.onDisk(path) ?? path)
  return found
}
