import { compare } from '../source/place.ts'
import { type Change, compareChanges, type Thing, things } from './change.ts'
import { underNewNames, withDevices } from './checkout-items.ts'
import { compareThings } from './compare-things.ts'
import { addresses, devicesWithSignals, orphanSignals, signalsOf } from './device-signals.ts'
import { droppedColumns, withoutColumns } from './dropped-columns.ts'
import { followRenames } from './follow-renames.ts'
import { dropped, isDropped, lacks, missing, type NotCompared } from './not-compared.ts'
import type { MachineRecords, Partly, RecordTable, Revision } from './records.ts'
import type { Sureness } from './sureness.ts'
import { thingSpecs } from './thing-specs.ts'
import { withLeftOut } from './with-left-out.ts'
import { withSuccessors } from './with-successors.ts'

export interface Comparison {
  old: Revision
  now: Revision
  /** In their one order. */
  changes: readonly Change[]
  /** Lists and rows that one of the two revisions could not give: nothing is said of them. */
  notCompared: readonly NotCompared[]
}

/** Compares the data of two revisions of a machine. Says nothing of what could not be read on either side. */
export function compareRecords(whole: MachineRecords, now: MachineRecords): Comparison {
  const columns = droppedColumns(whole, now)
  const old = withoutColumns(whole, columns)
  const isSkipped = (table: RecordTable) => lacks(old, table, 'list') || lacks(now, table, 'list') || isDropped(table, old, now)
  const partly = (table: RecordTable): Partly => ({ old: lacks(old, table, 'rows'), now: lacks(now, table, 'rows') })
  const signals = signalsOf(old, now, partly('signals'), isSkipped('signals'))
  const oldSpecs = thingSpecs((tag) => addresses(signals.old.get(tag), signals.partly.old))
  const specs = thingSpecs((tag) => addresses(signals.now.get(tag), signals.partly.now))
  const compared: { thing: Thing; unsure: Sureness['unsure']; changes: Change[] }[] = []
  for (const [index, spec] of specs.entries()) {
    const oldSpec = oldSpecs[index]
    if (!oldSpec || isSkipped(spec.table)) continue
    const isCheckout = spec.table === 'checkout'
    // Items are known by the names of what they are about, which comes before them.
    const items = underNewNames(old.tables.checkout, isCheckout ? compared.flatMap(({ changes }) => changes) : [])
    const found = compareThings(oldSpec, spec, isCheckout ? items.rows : old.tables[spec.table], now.tables[spec.table], partly(spec.table))
    const own = spec.table === 'devices' ? devicesWithSignals(spec, found, signals) : found.changes
    const changes = isCheckout
      ? own.map((it) => withDevices({ ...it, was: it.was === undefined ? undefined : items.was(it.was) }, old, now))
      : withLeftOut(spec, own, old, now)
    compared.push({ thing: things[spec.table], unsure: found.unsure, changes })
  }
  const unsure = (side: 'old' | 'new') =>
    compared.flatMap(({ thing, unsure }): NotCompared[] => {
      const ids = [...new Set(side === 'new' ? unsure.old : unsure.now)].sort(compare)
      return ids.length > 0 ? [{ thing, extent: 'unsure', ids, side }] : []
    })
  const orphans = lacks(old, 'devices') || lacks(now, 'devices') ? [] : orphanSignals(old, now, signals)
  return {
    old: old.revision,
    now: now.revision,
    changes: followRenames([...compared.flatMap(({ changes }) => changes), ...orphans])
      .map((it) => withSuccessors(it, old, now))
      .sort(compareChanges),
    notCompared: [
      ...columns.map(({ table, column }): NotCompared => ({ thing: things[table], extent: 'column', ids: [column], side: 'new' })),
      ...missing(old, 'old'),
      ...unsure('old'),
      ...dropped(old, now),
      ...missing(now, 'new'),
      ...unsure('new'),
    ],
  }
}
