import type { ChangeKind, Detail } from './change.ts'
import { type DataRow, differing, type Partly } from './records.ts'

const kinds: Readonly<Record<string, ChangeKind>> = {
  address: 're-addressed',
  card: 're-addressed',
  channel: 're-addressed',
  terminal: 're-terminaled',
  wire: 're-terminaled',
  pin: 're-terminaled',
  drawing: 'drawing-changed',
  sheet: 'drawing-changed',
}

/** What two signals must share to be one, the surest first. */
const sureties: readonly (readonly string[])[] = [
  ['address', 'signal'],
  ['signal', 'type', 'contact'],
  ['address'],
  ['symbol'],
  ['terminal'],
  ['meaning'],
  ['type'],
]

/**
 * What changed in the signals of one device, by what that means. The name of the signal stands before each field.
 * `partly`: rows of a revision are lost, so that a signal may be among them.
 */
export function compareSignals(
  old: readonly DataRow[],
  now: readonly DataRow[],
  partly: Partly = { old: false, now: false },
): Map<ChangeKind, Detail[]> {
  const found = new Map<ChangeKind, Detail[]>()
  const tell = (kind: ChangeKind, detail: Detail) => found.set(kind, [...(found.get(kind) ?? []), detail])
  const { pairs, gone, come } = pairSignals(old, now)
  const several = old.length > 1 || now.length > 1
  for (const [was, is] of pairs) {
    const name = several ? nameOf(is) : ''
    for (const field of differing(was, is)) {
      const detail = { field: name === '' ? field : `${name} ${field}`, was: was.values[field] ?? '', is: is.values[field] ?? '' }
      if (field !== 'tag') tell(kinds[field] ?? 'signal-changed', detail)
    }
  }
  for (const signal of partly.now ? [] : gone) tell('signal-changed', { field: 'signal', was: described(signal), is: '' })
  for (const signal of partly.old ? [] : come) tell('signal-changed', { field: 'signal', was: '', is: described(signal) })
  return found
}

function pairSignals(old: readonly DataRow[], now: readonly DataRow[]): { pairs: [DataRow, DataRow][]; gone: DataRow[]; come: DataRow[] } {
  const pairs: [DataRow, DataRow][] = []
  let gone: DataRow[] = []
  let come = [...now]
  for (const was of old) {
    const same = come.findIndex((is) => differing(was, is).length === 0)
    if (same === -1) gone.push(was)
    else come.splice(same, 1)
  }
  for (const columns of sureties) {
    const key = ({ values }: DataRow) => JSON.stringify(columns.map((column) => values[column] ?? ''))
    const empty = JSON.stringify(columns.map(() => ''))
    const only = (rows: readonly DataRow[], wanted: string) => {
      const same = rows.filter((row) => key(row) === wanted)
      return same.length === 1 ? same[0] : undefined
    }
    for (const was of [...gone]) {
      const is = only(gone, key(was)) && key(was) !== empty ? only(come, key(was)) : undefined
      if (!is) continue
      pairs.push([was, is])
      gone = gone.filter((it) => it !== was)
      come = come.filter((it) => it !== is)
    }
  }
  return { pairs, gone, come }
}

const nameOf = ({ values }: DataRow) => values.signal ?? values.symbol ?? values.address ?? ''
const described = ({ values }: DataRow) => [values.signal, values.type, values.address, values.terminal].filter(Boolean).join(' ')
