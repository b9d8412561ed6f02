import type { Change } from './change.ts'
import type { MachineRecords } from './records.ts'
import type { ThingSpec } from './thing-specs.ts'

/** What is in a list and fits none of the units is not gone, and was not new when it came to fit one. */
export function withLeftOut(spec: ThingSpec, changes: readonly Change[], old: MachineRecords, now: MachineRecords): Change[] {
  const rows = ({ leftOut }: MachineRecords) => new Map(leftOut.flatMap(({ table, row }) => (table === spec.table ? [[spec.idOf(row), row]] : [])))
  const [before, after] = [rows(old), rows(now)]
  return changes.map((it): Change => {
    const row = it.kind === 'removed' ? after.get(it.was ?? '') : undefined
    if (row) {
      const was = old.tables[spec.table].find((other) => spec.idOf(other) === it.was)
      const fits = { field: 'fits', was: was?.values.fits ?? '', is: row.values.fits ?? '' }
      return { ...it, kind: 'left-out', is: it.was, details: fits.was === fits.is ? [] : [fits], ...(row.place ? { newPlace: row.place } : {}) }
    }
    if (it.kind !== 'added' || !before.has(it.is ?? '')) return it
    return { ...it, notes: [...it.notes, 'the old revision has it in the list, for no option of these units'] }
  })
}
