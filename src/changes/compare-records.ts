import { compare, type Place } from '../source/place.ts'
import { type Change, compareChanges, things } from './change.ts'
import { compareSignals } from './compare-signals.ts'
import { change, compareThings, type ThingPair } from './compare-things.ts'
import { type DataRow, type MachineRecords, type RecordTable, type Revision, recordTables } from './records.ts'
import { type ThingSpec, thingSpecs } from './thing-specs.ts'

export interface Comparison {
  old: Revision
  now: Revision
  /** In their one order. */
  changes: readonly Change[]
  /** Lists and rows that one of the two revisions could not give: nothing is said of them. */
  notCompared: readonly NotCompared[]
}

export interface NotCompared {
  thing: string
  /** Undefined: the whole list. */
  id?: string
  place?: Place
  side: 'old' | 'new'
}

/** Compares the data of two revisions of a machine. Says nothing of what could not be read on either side. */
export function compareRecords(old: MachineRecords, now: MachineRecords): Comparison {
  const unread = new Set([...old.unread, ...now.unread])
  const broken = new Set([...old.broken, ...now.broken].map(({ table, id }) => `${table} ${id}`))
  const signalsOf = ({ tables }: MachineRecords) =>
    byTag(unread.has('signals') ? [] : tables.signals.filter(({ values }) => !broken.has(`signals ${values.tag ?? ''}`)))
  const [oldSignals, nowSignals] = [signalsOf(old), signalsOf(now)]
  const oldSpecs = thingSpecs((tag) => addresses(oldSignals.get(tag)))
  const specs = thingSpecs((tag) => addresses(nowSignals.get(tag)))
  const changes = specs.flatMap((spec, index): Change[] => {
    const oldSpec = oldSpecs[index]
    if (!oldSpec || unread.has(spec.table)) return []
    const kept = (rows: readonly DataRow[]) => rows.filter((row) => !broken.has(`${spec.table} ${spec.idOf(row)}`))
    const compared = compareThings(oldSpec, spec, kept(old.tables[spec.table]), kept(now.tables[spec.table]))
    if (spec.table === 'devices') return devicesWithSignals(spec, compared, oldSignals, nowSignals)
    return compared.changes
  })
  return {
    old: old.revision,
    now: now.revision,
    changes: [...changes, ...orphanSignals(old, now, oldSignals, nowSignals, unread, broken)]
      .map((it) => withNotes(it, old, now))
      .sort(compareChanges),
    notCompared: [...missing(old, 'old'), ...missing(now, 'new')],
  }
}

/** The changes of devices, those of their signals among them. */
function devicesWithSignals(
  spec: ThingSpec,
  { pairs, changes }: { pairs: readonly ThingPair[]; changes: readonly Change[] },
  oldSignals: ReadonlyMap<string, readonly DataRow[]>,
  nowSignals: ReadonlyMap<string, readonly DataRow[]>,
): Change[] {
  const owners = new Map([...nowSignals].flatMap(([tag, signals]) => addresses(signals).map((address) => [address, tag] as const)))
  const merged = new Map(changes.map((it) => [JSON.stringify([it.kind, it.was, it.is]), it]))
  for (const { old, now } of pairs) {
    const [was, is] = [spec.idOf(old), spec.idOf(now)]
    for (const [kind, details] of compareSignals(oldSignals.get(was) ?? [], nowSignals.get(is) ?? [])) {
      const notes = details.flatMap(({ field, was: before }) => {
        const owner = /(^| )address$/.test(field) ? owners.get(before) : undefined
        return owner !== undefined && owner !== is ? [`\`${before}\` belongs to \`${owner}\` now`] : []
      })
      const key = JSON.stringify([kind, was, is])
      const known = merged.get(key)
      merged.set(key, known ? { ...known, details: [...known.details, ...details] } : change(spec, kind, old, now, details, notes))
    }
  }
  return [...merged.values()]
}

/** Signals of a tag that neither revision has as a device are compared by that tag. */
function orphanSignals(
  old: MachineRecords,
  now: MachineRecords,
  before: ReadonlyMap<string, readonly DataRow[]>,
  after: ReadonlyMap<string, readonly DataRow[]>,
  unread: ReadonlySet<RecordTable>,
  broken: ReadonlySet<string>,
): Change[] {
  if (unread.has('devices')) return []
  const known = new Set([...old.tables.devices, ...now.tables.devices].map(({ values }) => values.tag ?? ''))
  const tags = [...new Set([...before.keys(), ...after.keys()])].filter((tag) => !known.has(tag) && !broken.has(`devices ${tag}`))
  return tags.sort(compare).flatMap((tag): Change[] => {
    const details = [...compareSignals(before.get(tag) ?? [], after.get(tag) ?? [])].flatMap(([, it]) => it)
    if (details.length === 0) return []
    const [was, is] = [before.has(tag) ? tag : undefined, after.has(tag) ? tag : undefined]
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

function missing({ unread, broken }: MachineRecords, side: NotCompared['side']): NotCompared[] {
  return [
    ...recordTables.filter((table) => unread.includes(table)).map((table): NotCompared => ({ thing: `${things[table]}s`, side })),
    ...broken.map(({ table, id, place }): NotCompared => ({ thing: things[table], id, place, side })),
  ]
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

const addresses = (signals: readonly DataRow[] = []) => signals.flatMap(({ values }) => values.address ?? [])
