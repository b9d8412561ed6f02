import type { Hazard } from '../model/hazard.ts'
import type { ReadData } from '../model/lost-data.ts'
import type { EnergySource, Machine } from '../model/machine.ts'
import type { Located } from '../source/place.ts'
import { energyRow, hazardRow, rowOf } from './data-row.ts'
import { type DataRow, type RecordTable, recordTables } from './records.ts'

/** Rows that are in none of the units: they fit none, or it is not known whether they do, or they could be read in part. */
export function otherRows(machines: readonly [Machine, ...Machine[]], read: ReadData | undefined, source: string) {
  const known = new Set(Object.keys(machines[0].file.options ?? {}))
  const optionsOf = (row: object) => ('fits' in row && Array.isArray(row.fits) ? row.fits.map(({ value }: Located<string>) => value) : [])
  const isFitted = (row: object) => {
    const options = optionsOf(row)
    return options.length === 0 || options.some((it) => !known.has(it) || machines.some(({ unit }) => unit.fitted.includes(it)))
  }
  const asData = (table: RecordTable, row: object) => {
    if (table === 'energy') return energyRow(row as EnergySource, source)
    if (table === 'hazards') return hazardRow(row as Hazard, source)
    return table === 'checkout' ? { values: {} } : rowOf(table, row, source)
  }
  const ofDevices = inheritedFits(read)
  const absent = (table: RecordTable) => {
    const present = new Set(machines.flatMap((machine): readonly object[] => (table === 'checkout' ? [] : (machine[table] ?? []))))
    return (read?.rows[table] ?? []).filter((row) => !present.has(row) && !(table === 'signals' && 'fits' in row && ofDevices.has(row.fits)))
  }
  const damaged = (table: RecordTable) => (read?.lost ?? []).flatMap((it) => (it.extent === 'row' && it.table === table ? [it] : []))
  return {
    leftOut: recordTables.flatMap((table) =>
      absent(table)
        .filter((row) => !isFitted(row))
        .map((row) => ({ table, row: asData(table, row) })),
    ),
    /** An option that machine.yaml does not know says nothing of the units. */
    partly: (table: RecordTable): DataRow[] => [
      ...absent(table)
        .filter(isFitted)
        .map((row) => ({ ...asData(table, row), unread: ['fits'] })),
      ...damaged(table)
        .filter(({ row }) => isFitted(row))
        .map(({ row, columns }) => ({ ...asData(table, row), unread: columns })),
    ],
  }
}

/** Options of devices, as they stand in the rows of their signals: such a signal is where its device is. */
function inheritedFits(read: ReadData | undefined): Set<unknown> {
  const damaged = (read?.lost ?? []).flatMap((it) => (it.extent === 'row' && it.table === 'devices' ? [it.row] : []))
  return new Set([...(read?.rows.devices ?? []), ...damaged].map((row) => ('fits' in row ? row.fits : undefined)))
}
