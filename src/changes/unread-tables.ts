import type { Machine } from '../model/machine.ts'
import type { Finding } from '../source/finding.ts'
import type { RecordTable } from './records.ts'

/**
 * Lists of which nothing can be said, besides those that the machine names itself: a list that machine.yaml names
 * and that gave no row while something could not be read, and settings with a row that could not be read.
 */
export function unreadTables(machines: readonly [Machine, ...Machine[]], findings: readonly Finding[]): RecordTable[] {
  const [{ file }] = machines
  return (['signals', 'cards', 'formats'] as const).filter((table) => {
    const entry = file.data[table]
    if (!entry) return false
    const holdsError = (path: string) =>
      findings.some(({ severity, place }) => severity === 'error' && (place.file === path || place.file.endsWith(`/${path}`)))
    const isEmpty = machines.every((machine) => machine[table].length === 0)
    return isEmpty ? holdsError(entry.file) || holdsError('machine.yaml') : table === 'formats' && holdsError(entry.file)
  })
}
