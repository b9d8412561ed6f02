import type { Machine, NamedThing, Reference } from '../model/machine.ts'
import type { Problem } from '../source/finding.ts'
import { namesOf } from './names.ts'
import { advice, suggestFrom } from './suggest.ts'

export interface UnknownName {
  kind: NamedThing
  /** `no device has the tag`, and then the name. */
  message: string
  /** What such a thing is called: `tag`. */
  noun: string
  /** What to do when no name is near. */
  otherwise: string
  /** What to look at before one of several names is chosen. */
  beforeChoosing?: string
}

/**
 * A problem for each reference to a name that nothing has. Names that are in the folder and not in this unit
 * are left to `not-fitted`, and names whose own row or page is broken are reported there.
 */
export function* unknownNames(machine: Machine, { kind, message, noun, otherwise, beforeChoosing }: UnknownName): Iterable<Problem> {
  const { references, absent, unread } = machine
  if (unread.has(kind)) return
  const names = namesOf(machine, kind)
  const suggest = suggestFrom(names)
  for (const { id, place } of referencesTo(references, kind)) {
    if (names.has(id) || absent.has(`${kind}:${id}`)) continue
    yield { message: `${message} \`${id}\``, place, help: advice(suggest(id), noun, otherwise, beforeChoosing) }
  }
}

export function referencesTo(references: readonly Reference[], kind: NamedThing): Reference[] {
  return references.filter((reference) => reference.kind === kind)
}
