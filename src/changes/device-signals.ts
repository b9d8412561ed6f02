import { compare } from '../source/place.ts'
import { type Change, type ChangeKind, type Detail, things } from './change.ts'
import { compareSignals } from './compare-signals.ts'
import { change, type ThingPair } from './compare-things.ts'
import type { DataRow, MachineRecords, Partly } from './records.ts'
import type { ThingSpec } from './thing-specs.ts'

/** Signals by their tag, of both revisions. */
export interface Signals {
  old: ReadonlyMap<string, readonly DataRow[]>
  now: ReadonlyMap<string, readonly DataRow[]>
  partly: Partly
}

/** `skip`: the I/O list of a revision could not be read. */
export function signalsOf(old: MachineRecords, now: MachineRecords, partly: Partly, skip: boolean): Signals {
  const own = ({ tables }: MachineRecords) => byTag(skip ? [] : tables.signals)
  return withStrays({ old: own(old), now: own(now), partly })
}

/** A row that was read in part and has a tag of its own may have lost its tag, and be the signal of any device. */
function withStrays({ old, now, partly }: Signals): Signals {
  const holdsStray = (own: Signals['old'], other: Signals['old']) =>
    [...own].some(([tag, rows]) => !other.has(tag) && rows.some(({ unread }) => unread))
  return { old, now, partly: { old: partly.old || holdsStray(old, now), now: partly.now || holdsStray(now, old) } }
}

/** The changes of devices, those of their signals among them. */
export function devicesWithSignals(
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
export function orphanSignals(old: MachineRecords, now: MachineRecords, signals: Signals): Change[] {
  const known = new Set([...old.tables.devices, ...now.tables.devices].map(({ values }) => values.tag ?? ''))
  const tags = [...new Set([...signals.old.keys(), ...signals.now.keys()])].filter((tag) => !known.has(tag))
  return tags.sort(compare).flatMap((tag): Change[] => {
    const details = [...signalChanges(tag, tag, signals)].flatMap(([, it]) => it)
    if (details.length === 0) return []
    const [was, is] = [signals.old.has(tag) ? tag : undefined, signals.now.has(tag) ? tag : undefined]
    return [{ kind: 'signal-changed', thing: things.signals, was, is, text: 'signals of a tag that no device has', details, notes: [] }]
  })
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
export function addresses(signals: readonly DataRow[] = [], isPartly = false): string[] | undefined {
  const isUnknown = signals.length === 0 ? isPartly : signals.some(({ unread }) => unread?.includes('address'))
  return isUnknown ? undefined : signals.flatMap(({ values }) => values.address ?? [])
}
