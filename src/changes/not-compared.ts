import type { Place } from '../source/place.ts'
import { type Thing, things } from './change.ts'
import { type DataRow, type MachineRecords, type RecordTable, recordTables } from './records.ts'
import { thingSpecs } from './thing-specs.ts'

/**
 * What a revision could not give. `list`: all of it; `no-list`: it has no such list; `column`: nor one with this
 * column; `rows`: rows under names that are not known; `row`: the one that `ids` names; `unsure`: names of the other
 * revision of which it is not known whether this one has them, and under which name.
 */
export interface NotCompared {
  thing: Thing
  extent: 'list' | 'no-list' | 'column' | 'rows' | 'row' | 'unsure'
  ids: readonly string[]
  place?: Place
  side: 'old' | 'new'
}

export const lacks = ({ lost }: MachineRecords, table: RecordTable, extent?: 'list' | 'rows') =>
  lost.some((it) => it.table === table && (extent === undefined || it.extent === extent))

/** A list that the new revision does not name any more says nothing of its things. */
export const isDropped = (table: RecordTable, old: MachineRecords, now: MachineRecords) =>
  now.unlisted.includes(table) && old.tables[table].length > 0

export const dropped = (old: MachineRecords, now: MachineRecords) =>
  recordTables
    .filter((table) => isDropped(table, old, now))
    .map((table): NotCompared => ({ thing: things[table], extent: 'no-list', ids: [], side: 'new' }))

/** Lists and rows that a revision could not give. */
export function missing({ lost, tables }: MachineRecords, side: NotCompared['side']): NotCompared[] {
  const specs = thingSpecs(() => [])
  const idOf = (table: RecordTable, row: DataRow) => specs.find((spec) => spec.table === table)?.idOf(row) ?? row.values.tag ?? ''
  return recordTables.flatMap((table) => [
    ...lost.filter((it) => it.table === table).map(({ extent, place }): NotCompared => ({ thing: things[table], extent, ids: [], place, side })),
    ...tables[table]
      .filter(({ unread }) => unread)
      .map(
        (row): NotCompared => ({ thing: things[table], extent: 'row', ids: [idOf(table, row)], ...(row.place ? { place: row.place } : {}), side }),
      ),
  ])
}
