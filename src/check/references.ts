import type { Machine, NamedThing, Reference } from '../model/machine.ts'
import type { Problem } from '../source/finding.ts'
import { misnamed, misnamedProblem, unknownReferences } from './misnamed.ts'
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
 * A problem for each reference to a name that nothing has; one for all where the thing itself is misnamed. Names that are in the folder and not in this unit
 * are left to `not-fitted`, and names whose own row or page is broken are reported there.
 */
export function* unknownNames(machine: Machine, { kind, message, noun, otherwise, beforeChoosing }: UnknownName): Iterable<Problem> {
  if (machine.unread.has(kind)) return
  const unknown = unknownReferences(machine, kind)
  const suggest = suggestFrom(unknown.length > 0 ? namesOf(machine, kind) : [])
  const slips = misnamed(machine, kind, unknown)
  for (const slip of slips.values()) yield misnamedProblem(slip, noun)
  for (const { id, place } of unknown) {
    if (slips.has(id)) continue
    yield { message: `${message} \`${id}\``, place, help: advice(suggest(id), noun, otherwise, beforeChoosing) }
  }
}

export function referencesTo(references: readonly Reference[], kind: NamedThing): Reference[] {
  return references.filter((reference) => reference.kind === kind)
}
