import type { Change, Detail, Thing } from './change.ts'

/** Columns that name a thing of another list, or of their own. */
const namesIn: Readonly<Record<string, (thing: Thing) => Thing>> = {
  part: () => 'part',
  alternatives: () => 'part',
  supersededBy: (thing) => thing,
  drawing: () => 'drawing',
  tag: () => 'device',
  tags: () => 'device',
  card: () => 'card',
}

/**
 * Leaves out what only follows a new name: a device whose part has another number has no other part. What isolates an
 * energy source, and what a hazard comes from, is always told.
 */
export function followRenames(changes: readonly Change[]): Change[] {
  const renames = new Map(changes.flatMap(({ kind, thing, was, is }) => (kind === 'renamed' ? [[`${thing} ${was}`, is ?? '']] : [])))
  const follows = (thing: Thing, { field, was, is }: Detail) => {
    const column = /[^ ]+$/.exec(field)?.[0] ?? ''
    const named = namesIn[column]?.(thing)
    if (named === undefined || was === '') return false
    const expected = was.split(' ').map((name) => renames.get(`${named} ${name}`) ?? name)
    return expected.sort().join(' ') === is.split(' ').sort().join(' ')
  }
  return changes.flatMap((change) => {
    if (change.thing === 'energy source' || change.thing === 'hazard') return [change]
    const details = change.details.filter((detail) => !follows(change.thing, detail))
    if (details.length === change.details.length) return [change]
    return details.length > 0 ? [{ ...change, details }] : []
  })
}
