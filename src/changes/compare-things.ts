import { type Change, type ChangeKind, type Detail, things } from './change.ts'
import { plainText } from './likeness.ts'
import { matchBestPairs } from './match.ts'
import { type DataRow, differing } from './records.ts'
import { settledTexts, type Traits } from './score.ts'
import type { ThingSpec } from './thing-specs.ts'

export interface ThingPair {
  old: DataRow
  now: DataRow
}

/** One list in two revisions, and which row became which. */
interface Compared {
  spec: ThingSpec
  old: readonly DataRow[]
  now: readonly DataRow[]
  nowOf: ReadonlyMap<DataRow, DataRow>
  oldOf: ReadonlyMap<DataRow, DataRow>
  /** Name -> its row; the first of several. */
  oldById: ReadonlyMap<string, DataRow>
  nowById: ReadonlyMap<string, DataRow>
}

/**
 * What became of the things of one list. What hangs on other lists, such as the signals of a device, is not in it.
 * The two specifications are the same but for the lists that they look into.
 */
export function compareThings(
  oldSpec: ThingSpec,
  spec: ThingSpec,
  old: readonly DataRow[],
  now: readonly DataRow[],
): { pairs: ThingPair[]; changes: Change[] } {
  const [before, after] = [old.map((row) => traitsOf(oldSpec, row)), now.map((row) => traitsOf(spec, row))]
  const matched = spec.byName ? pairsByName(before, after) : matchBestPairs(before, after)
  const pairs = matched.flatMap((pair): ThingPair[] => {
    const [was, is] = [old[pair.old], now[pair.now]]
    return was && is ? [{ old: was, now: is }] : []
  })
  const compared: Compared = {
    spec,
    old,
    now,
    nowOf: new Map(pairs.map((pair) => [pair.old, pair.now])),
    oldOf: new Map(pairs.map((pair) => [pair.now, pair.old])),
    oldById: firstById(spec, old),
    nowById: firstById(spec, now),
  }
  const reused = reusedNames(compared, takenTexts(before, after))
  return { pairs, changes: [...reused.values(), ...fates(compared, reused), ...arrivals(compared, reused)] }
}

/** Names that stand in both revisions and do not mean the same thing: the old text still finds something. */
function reusedNames({ spec, nowOf, oldOf, oldById, nowById }: Compared, taken: ReadonlyMap<string, string>): Map<string, Change> {
  const found = new Map<string, Change>()
  for (const [id, was] of oldById) {
    const is = nowById.get(id)
    if (!is) continue
    const [went, came] = [nowOf.get(was), oldOf.get(is)]
    const [before, after] = [spec.textOf(was), spec.textOf(is)]
    const changed = before !== after && plainText(before) !== plainText(after)
    const owner = changed ? taken.get(plainText(after)) : undefined
    if (went === is && (owner === undefined || owner === id)) continue
    const notes =
      went === is
        ? [`\`${id}\` has the text that \`${owner}\` had`]
        : [
            went ? `what was \`${id}\` is \`${spec.idOf(went)}\` now` : `what was \`${id}\` is gone`,
            came ? `what is \`${id}\` now was \`${spec.idOf(came)}\`` : `what is \`${id}\` now is new`,
          ]
    found.set(id, change(spec, 'means-another', was, is, [{ field: 'text', was: before, is: after }], notes))
  }
  return found
}

/** What became of each row of the old revision. */
function fates({ spec, old, nowOf, oldById }: Compared, reused: ReadonlyMap<string, Change>): Change[] {
  return old.flatMap((was) => {
    const is = nowOf.get(was)
    const id = spec.idOf(was)
    if (!is) return reused.has(id) && oldById.get(id) === was ? [] : [change(spec, 'removed', was, undefined)]
    const notes = reused.has(id) ? [`for pages with \`${id}\` see what it means now`] : []
    const renamed = id === spec.idOf(is) ? [] : [change(spec, 'renamed', was, is, [{ field: 'name', was: id, is: spec.idOf(is) }], notes)]
    const columns = [...changedColumns(spec, was, is)]
      // A name that has the text of another is told as such.
      .filter(([kind]) => kind !== 'reworded' || renamed.length > 0 || !reused.has(id))
      .map(([kind, details]) => change(spec, kind, was, is, details))
    return [...renamed, ...columns]
  })
}

function arrivals({ spec, now, oldOf, nowById }: Compared, reused: ReadonlyMap<string, Change>): Change[] {
  return now
    .filter((is) => !oldOf.has(is) && !(reused.has(spec.idOf(is)) && nowById.get(spec.idOf(is)) === is))
    .map((is) => change(spec, 'added', undefined, is))
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
  return {
    id: spec.idOf(row),
    text: spec.textOf(row),
    links: spec.linksOf(row),
    kin: spec.kinOf(row),
    around: spec.around.map((column) => row.values[column] ?? ''),
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
