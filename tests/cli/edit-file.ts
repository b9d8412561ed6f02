import { readFileSync, writeFileSync } from 'node:fs'

/** Writes another text in the place of one that a file holds. Throws where it does not: the edit would change nothing. */
export function editFile(file: string, was: string, is: string): void {
  const before = readFileSync(file, 'utf8')
  if (!before.includes(was)) throw new Error(`${file} does not hold ${was}`)
  writeFileSync(file, before.replace(was, is))
}
