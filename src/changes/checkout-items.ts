import { compare } from '../source/place.ts'
import type { Change } from './change.ts'
import type { DataRow, MachineRecords } from './records.ts'

/** `part 4410-0112` in its two halves. */
export function splitItem(id: string): { kind: string; name: string } {
  const gap = id.indexOf(' ')
  return { kind: id.slice(0, gap), name: id.slice(gap + 1) }
}

/** The items of the old revision under the names that their devices, parts and cards have in the new one; `was` finds the old name again. */
export function underNewNames(rows: readonly DataRow[], changes: readonly Change[]): { rows: readonly DataRow[]; was(id: string): string } {
  const renames = new Map(
    changes.flatMap(({ kind, thing, was, is }) => (kind === 'renamed' && was !== undefined && is !== undefined ? [[`${thing} ${was}`, is]] : [])),
  )
  const old = new Map<string, string>()
  const renamed = rows.map((row): DataRow => {
    const id = row.values.id ?? ''
    const { kind, name } = splitItem(id)
    // A card is described by its own name or by its part number.
    const now = renames.get(id) ?? (kind === 'card' ? renames.get(`part ${name}`) : undefined)
    if (now === undefined) return row
    old.set(`${kind} ${now}`, id)
    return { ...row, values: { ...row.values, id: `${kind} ${now}` } }
  })
  return { rows: renamed, was: (id) => old.get(id) ?? id }
}

const mostShown = 6

/** With the devices that an item is about, and a note of them where it is not their own. */
export function withDevices(change: Change, old: MachineRecords, now: MachineRecords): Change {
  const [id, records] = change.is === undefined ? [change.was ?? '', old] : [change.is, now]
  const devices = [...new Set(devicesOf(id, records))].sort(compare)
  const more = devices.length - mostShown
  const named = devices.slice(0, mostShown).map((tag) => `\`${tag}\``)
  const note = `it holds for ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}`
  return { ...change, devices, notes: splitItem(id).kind === 'device' || devices.length === 0 ? change.notes : [...change.notes, note] }
}

function devicesOf(id: string, records: MachineRecords): string[] {
  const { devices, signals, cards, checkout } = records.tables
  const { kind, name } = splitItem(id)
  const tagsWhere = (rows: readonly DataRow[], column: string, among: ReadonlySet<string | undefined>) =>
    rows.flatMap(({ values }) => (values.tag !== undefined && among.has(values[column]) ? [values.tag] : []))
  if (kind === 'device') return [name]
  if (kind === 'part') return tagsWhere(devices, 'part', new Set([name]))
  if (kind === 'card') {
    const own = cards.flatMap(({ values }) => (values.part === name ? [values.card] : []))
    return tagsWhere(signals, 'card', new Set([name, ...own]))
  }
  return checkout.flatMap(({ values }) => (values.supply === name && values.id !== undefined ? devicesOf(values.id, records) : []))
}
