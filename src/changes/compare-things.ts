import { type Change, type ChangeKind, type Detail, things } from './change.ts'
import { plainText } from './likeness.ts'
import { matchBestPairs } from './match.ts'
import { type DataRow, differing, type Partly } from './records.ts'
import { settledTexts, type Traits } from './score.ts'
import { type MatchedRows, type Sureness, surenessOf } from './sureness.ts'
import type { ThingSpec } from './thing-specs.ts'

export interface ThingPair {
  old: DataRow
  now: DataRow
}

interface Compared extends MatchedRows {
  spec: ThingSpec
  sure: Sureness
}

/**
 * What became of the things of one list. What hangs on other lists, such as the signals of a device, is not in it.
 * The two specifications are the same but for the lists that they look into. Nothing is said of what is not sure.
 */
export function compareThings(
  oldSpec: ThingSpec,
  spec: ThingSpec,
  old: readonly DataRow[],
  now: readonly DataRow[],
  partly: Partly,
): { pairs: ThingPair[]; changes: Change[]; unsure: Sureness['unsure'] } {
  const [before, after] = [old.map((row) => traitsOf(oldSpec, row)), now.map((row) => traitsOf(spec, row))]
  const matched = spec.byName ? pairsByName(before, after) : matchBestPairs(before, after)
  const pairs = matched.flatMap((pair): ThingPair[] => {
    const [was, is] = [old[pair.old], now[pair.now]]
    return was && is ? [{ old: was, now: is }] : []
  })
  const rows: MatchedRows = {
    old,
    now,
    nowOf: new Map(pairs.map((pair) => [pair.old, pair.now])),
    oldOf: new Map(pairs.map((pair) => [pair.now, pair.old])),
    oldById: firstById(spec, old),
    nowById: firstById(spec, now),
  }
  const sure = surenessOf(spec.idOf, rows, partly)
  const compared: Compared = { ...rows, spec, sure }
  const reused = reusedNames(compared, takenTexts(before, after))
  return {
    pairs: pairs.filter((pair) => sure.ofPair(pair.old, pair.now)),
    changes: [...reused.values(), ...fates(compared, reused), ...arrivals(compared, reused)],
    unsure: sure.unsure,
  }
}

/** Names that stand in both revisions and do not mean the same thing: the old text still finds something. */
function reusedNames({ spec, nowOf, oldOf, oldById, nowById, sure }: Compared, taken: ReadonlyMap<string, string>): Map<string, Change> {
  const found = new Map<string, Change>()
  for (const [id, was] of oldById) {
    const is = nowById.get(id)
    if (!is || was.unread || is.unread) continue
    const [went, came] = [nowOf.get(was), oldOf.get(is)]
    const [before, after] = [spec.textOf(was), spec.textOf(is)]
    const changed = before !== after && plainText(before) !== plainText(after)
    const owner = changed ? taken.get(plainText(after)) : undefined
    if (went === is && (owner === undefined || owner === id)) continue
    const notes =
      went === is
        ? [`\`${id}\` has the text that \`${owner}\` had`]
        : [
            went ? `what was \`${id}\` is \`${spec.idOf(went)}\` now` : `what was \`${id}\` ${sure.ofLone.old ? 'is gone' : notFound}`,
            came ? `what is \`${id}\` now was \`${spec.idOf(came)}\`` : `what is \`${id}\` now ${sure.ofLone.now ? 'is new' : notFound}`,
          ]
    found.set(id, change(spec, 'means-another', was, is, [{ field: 'text', was: before, is: after }], notes))
  }
  return found
}

const notFound = 'is not among what could be read of the other revision'

/** What became of each row of the old revision. */
function fates({ spec, old, nowOf, oldById, nowById, sure }: Compared, reused: ReadonlyMap<string, Change>): Change[] {
  return old.flatMap((was) => {
    const is = nowOf.get(was)
    const id = spec.idOf(was)
    if (!is) {
      if (was.unread || (reused.has(id) && oldById.get(id) === was)) return []
      const other = nowById.get(id)
      // A name that stood in several rows is not gone with one of them.
      if (other) return other.unread ? [] : [change(spec, 'changed', was, other, [{ field: 'row', was: spec.textOf(was), is: '' }])]
      return sure.ofLone.old ? [change(spec, 'removed', was, undefined)] : []
    }
    if (!sure.ofPair(was, is)) return []
    const notes = reused.has(id) ? [`for pages with \`${id}\` see what it means now`] : []
    const renamed = id === spec.idOf(is) ? [] : [change(spec, 'renamed', was, is, [{ field: 'name', was: id, is: spec.idOf(is) }], notes)]
    const columns = [...changedColumns(spec, was, is)]
      // A name that has the text of another is told as such.
      .filter(([kind]) => kind !== 'reworded' || renamed.length > 0 || !reused.has(id))
      .map(([kind, details]) => change(spec, kind, was, is, details))
    return [...renamed, ...columns]
  })
}

function arrivals({ spec, now, oldOf, oldById, nowById, sure }: Compared, reused: ReadonlyMap<string, Change>): Change[] {
  return now.flatMap((is) => {
    const id = spec.idOf(is)
    if (oldOf.has(is) || is.unread || (reused.has(id) && nowById.get(id) === is)) return []
    const other = oldById.get(id)
    if (other) return other.unread ? [] : [change(spec, 'changed', other, is, [{ field: 'row', was: '', is: spec.textOf(is) }])]
    return sure.ofLone.now ? [change(spec, 'added', undefined, is)] : []
  })
}

/** Columns that differ, by what that means. */
function changedColumns(spec: ThingSpec, was: DataRow, is: DataRow): Map<ChangeKind, Detail[]> {
  const found = new Map<ChangeKind, Detail[]>()
  for (const field of differing(was, is)) {
    if (spec.idColumns.includes(field)) continue
    const detail = { field, was: was.values[field] ?? '', is: is.values[field] ?? '' }
    const kind = spec.kinds[field.split('.')[0] ?? ''] ?? spec.otherwise
    found.set(kind, [...(found.get(kind) ?? []), detail])
  }
  return found
}

export function change(
  spec: ThingSpec,
  kind: ChangeKind,
  was: DataRow | undefined,
  is: DataRow | undefined,
  details: readonly Detail[] = [],
  notes: readonly string[] = [],
): Change {
  const shown = is ?? was
  return {
    kind,
    thing: things[spec.table],
    was: was && spec.idOf(was),
    is: is && spec.idOf(is),
    text: shown ? spec.textOf(shown) : '',
    details,
    notes,
    ...(was?.place ? { oldPlace: was.place } : {}),
    ...(is?.place ? { newPlace: is.place } : {}),
  }
}

function traitsOf(spec: ThingSpec, row: DataRow): Traits {
  const links = spec.linksOf(row)
  return {
    id: spec.idOf(row),
    text: spec.textOf(row),
    links: links ?? [],
    kin: spec.kinOf(row),
    around: spec.around.map((column) => row.values[column] ?? ''),
    ...(row.unread || !links ? { isPartial: true } : {}),
  }
}

/** Text that stands once in each revision -> whose it was. */
function takenTexts(old: readonly Traits[], now: readonly Traits[]): Map<string, string> {
  const plain = (rows: readonly Traits[]) => rows.map(({ id, text }) => ({ id, plain: plainText(text) }))
  const before = plain(old)
  const settled = settledTexts(before, plain(now))
  return new Map(before.flatMap(({ id, plain }) => (settled.has(plain) ? [[plain, id] as const] : [])))
}

function firstById(spec: ThingSpec, rows: readonly DataRow[]): Map<string, DataRow> {
  const found = new Map<string, DataRow>()
  for (const row of rows) if (!found.has(spec.idOf(row))) found.set(spec.idOf(row), row)
  return found
}

function pairsByName(old: readonly Traits[], now: readonly Traits[]): { old: number; now: number }[] {
  const positions = new Map(now.map(({ id }, index) => [id, index]))
  return old.flatMap(({ id }, index) => {
    const found = positions.get(id)
    positions.delete(id)
    return found === undefined ? [] : [{ old: index, now: found }]
  })
}
