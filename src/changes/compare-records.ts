import { compare, type Place } from '../source/place.ts'
import { type Change, type ChangeKind, compareChanges, type Detail, type Thing, things } from './change.ts'
import { compareSignals } from './compare-signals.ts'
import { change, compareThings, type ThingPair } from './compare-things.ts'
import { followRenames } from './follow-renames.ts'
import { type DataRow, type MachineRecords, type Partly, type RecordTable, type Revision, recordTables } from './records.ts'
import { type ThingSpec, thingSpecs } from './thing-specs.ts'

export interface Comparison {
  old: Revision
  now: Revision
  /** In their one order. */
  changes: readonly Change[]
  /** Lists and rows that one of the two revisions could not give: nothing is said of them. */
  notCompared: readonly NotCompared[]
}

/**
 * What a revision could not give. `list`: all of it; `no-list`: it has no such list; `rows`: rows under names that are
 * not known; `row`: the one that `ids` names; `unsure`: names of the other revision that may be among these.
 */
export interface NotCompared {
  thing: Thing
  extent: 'list' | 'no-list' | 'rows' | 'row' | 'unsure'
  ids: readonly string[]
  place?: Place
  side: 'old' | 'new'
}

/** Compares the data of two revisions of a machine. Says nothing of what could not be read on either side. */
export function compareRecords(old: MachineRecords, now: MachineRecords): Comparison {
  const isSkipped = (table: RecordTable) => lacks(old, table, 'list') || lacks(now, table, 'list') || isDropped(table, old, now)
  const partly = (table: RecordTable): Partly => ({ old: lacks(old, table, 'rows'), now: lacks(now, table, 'rows') })
  const signalsOf = ({ tables }: MachineRecords) => byTag(isSkipped('signals') ? [] : tables.signals)
  const signals = withStrays({ old: signalsOf(old), now: signalsOf(now), partly: partly('signals') })
  const oldSpecs = thingSpecs((tag) => addresses(signals.old.get(tag), signals.partly.old))
  const specs = thingSpecs((tag) => addresses(signals.now.get(tag), signals.partly.now))
  const compared = specs.flatMap((spec, index) => {
    const oldSpec = oldSpecs[index]
    if (!oldSpec || isSkipped(spec.table)) return []
    const found = compareThings(oldSpec, spec, old.tables[spec.table], now.tables[spec.table], partly(spec.table))
    const changes = spec.table === 'devices' ? devicesWithSignals(spec, found, signals) : found.changes
    return [{ thing: things[spec.table], unsure: found.unsure, changes: withLeftOut(spec, changes, old, now) }]
  })
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
      .map((it) => withNotes(it, old, now))
      .sort(compareChanges),
    notCompared: [...missing(old, 'old'), ...unsure('old'), ...dropped(old, now), ...missing(now, 'new'), ...unsure('new')],
  }
}

/** What is in a list and fits none of the units is not gone, and was not new when it came to fit one. */
function withLeftOut(spec: ThingSpec, changes: readonly Change[], old: MachineRecords, now: MachineRecords): Change[] {
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

/** Signals by their tag, of both revisions. */
interface Signals {
  old: ReadonlyMap<string, readonly DataRow[]>
  now: ReadonlyMap<string, readonly DataRow[]>
  partly: Partly
}

/** A row that was read in part and has a tag of its own may have lost its tag, and be the signal of any device. */
function withStrays({ old, now, partly }: Signals): Signals {
  const holdsStray = (own: Signals['old'], other: Signals['old']) =>
    [...own].some(([tag, rows]) => !other.has(tag) && rows.some(({ unread }) => unread))
  return { old, now, partly: { old: partly.old || holdsStray(old, now), now: partly.now || holdsStray(now, old) } }
}

const lacks = ({ lost }: MachineRecords, table: RecordTable, extent?: 'list' | 'rows') =>
  lost.some((it) => it.table === table && (extent === undefined || it.extent === extent))

/** A list that the new revision does not name any more says nothing of its things. */
const isDropped = (table: RecordTable, old: MachineRecords, now: MachineRecords) => now.unlisted.includes(table) && old.tables[table].length > 0

const dropped = (old: MachineRecords, now: MachineRecords) =>
  recordTables
    .filter((table) => isDropped(table, old, now))
    .map((table): NotCompared => ({ thing: things[table], extent: 'no-list', ids: [], side: 'new' }))

/** The changes of devices, those of their signals among them. */
function devicesWithSignals(
  spec: ThingSpec,
  { pairs, changes }: { pairs: readonly ThingPair[]; changes: readonly Change[] },
  signals: Signals,
): Change[] {
  const owners = new Map([...signals.now].flatMap(([tag, rows]) => (addresses(rows) ?? []).map((address) => [address, tag] as const)))
  const key = ({ kind, was, is }: Pick<Change, 'kind' | 'was' | 'is'>) => JSON.stringify([kind, was, is])
  const merged = [...changes]
  const positions = new Map(changes.map((it, index) => [key(it), index]))
  for (const { old, now } of pairs) {
    const [was, is] = [spec.idOf(old), spec.idOf(now)]
    for (const [kind, details] of signalChanges(was, is, signals)) {
      const notes = details.flatMap(({ field, was: before }) => {
        const owner = /(^| )address$/.test(field) ? owners.get(before) : undefined
        return owner !== undefined && owner !== is ? [`\`${before}\` belongs to \`${owner}\` now`] : []
      })
      const position = positions.get(key({ kind, was, is })) ?? merged.length
      const known = merged[position]
      merged[position] = known ? { ...known, details: [...known.details, ...details] } : change(spec, kind, old, now, details, notes)
    }
  }
  return merged
}

/** What changed in the signals of a tag; nothing where one of its rows was read in part. */
function signalChanges(was: string, is: string, { old, now, partly }: Signals): Map<ChangeKind, Detail[]> {
  const [before, after] = [old.get(was) ?? [], now.get(is) ?? []]
  return [...before, ...after].some(({ unread }) => unread) ? new Map() : compareSignals(before, after, partly)
}

/** Signals of a tag that neither revision has as a device are compared by that tag. */
function orphanSignals(old: MachineRecords, now: MachineRecords, signals: Signals): Change[] {
  const known = new Set([...old.tables.devices, ...now.tables.devices].map(({ values }) => values.tag ?? ''))
  const tags = [...new Set([...signals.old.keys(), ...signals.now.keys()])].filter((tag) => !known.has(tag))
  return tags.sort(compare).flatMap((tag): Change[] => {
    const details = [...signalChanges(tag, tag, signals)].flatMap(([, it]) => it)
    if (details.length === 0) return []
    const [was, is] = [signals.old.has(tag) ? tag : undefined, signals.now.has(tag) ? tag : undefined]
    return [{ kind: 'signal-changed', thing: things.signals, was, is, text: 'signals of a tag that no device has', details, notes: [] }]
  })
}

/** What to order where a part was replaced. */
function withNotes(it: Change, old: MachineRecords, now: MachineRecords): Change {
  if (it.kind !== 'part-replaced' && it.kind !== 'superseded') return it
  const table = it.thing === 'drawing' ? 'drawings' : 'parts'
  const successor = new Map([...old.tables[table], ...now.tables[table]].map(({ values }) => [values.number ?? '', values.supersededBy]))
  const replaced = it.details.find(({ field }) => field === 'part')
  const starts = replaced ? [replaced.was, replaced.is] : [it.is ?? '']
  const chains = starts.map((number) => chainFrom(number, successor)).filter((chain) => chain.length > 1)
  // The chain from the old part often runs through the new one.
  const told = chains.filter((chain) => !chains.some((other) => other !== chain && other.includes(chain[0] ?? '')))
  return { ...it, notes: [...it.notes, ...told.map((chain) => `the list replaces ${chain.map((number) => `\`${number}\``).join(' by ')}`)] }
}

function chainFrom(number: string, successor: ReadonlyMap<string, string | undefined>): string[] {
  const chain = [number]
  for (let next = successor.get(number); next !== undefined && !chain.includes(next); next = successor.get(next)) chain.push(next)
  return chain
}

function missing({ lost, tables }: MachineRecords, side: NotCompared['side']): NotCompared[] {
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

/** Tag -> its signals, in an order of their own: that of the rows in the file says nothing. */
function byTag(signals: readonly DataRow[]): Map<string, DataRow[]> {
  const found = new Map<string, DataRow[]>()
  for (const signal of signals) {
    const tag = signal.values.tag ?? ''
    const list = found.get(tag)
    if (list) list.push(signal)
    else found.set(tag, [signal])
  }
  const key = ({ values }: DataRow) => JSON.stringify(Object.entries(values).sort(([a], [b]) => compare(a, b)))
  for (const list of found.values()) if (list.length > 1) list.sort((a, b) => compare(key(a), key(b)))
  return new Map([...found].sort(([a], [b]) => compare(a, b)))
}

/** Undefined where one of them could not be read, or all may be lost. */
function addresses(signals: readonly DataRow[] = [], isPartly = false): string[] | undefined {
  const isUnknown = signals.length === 0 ? isPartly : signals.some(({ unread }) => unread?.includes('address'))
  return isUnknown ? undefined : signals.flatMap(({ values }) => values.address ?? [])
}
