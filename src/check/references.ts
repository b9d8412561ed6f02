import type { Machine, NamedThing, Reference } from '../model/machine.ts'
import type { Problem } from '../source/finding.ts'
import { advice } from './suggest.ts'

export interface UnknownName {
  kind: NamedThing
  /** Every name of that kind that this unit has. */
  known: Iterable<string>
  /** `no device has the tag` … and then the name. */
  message: string
  /** What such a thing is called: `tag`. */
  noun: string
  /** What to do when no name is near. */
  otherwise: string
}

/**
 * A problem for each reference to a name that nothing has. Names that are in the folder and not in this unit
 * are left to `not-fitted`, and names whose own row or page is broken are reported there.
 */
export function* unknownNames({ references, absent, unread }: Machine, { kind, known, message, noun, otherwise }: UnknownName): Iterable<Problem> {
  if (unread.has(kind)) return
  const names = new Set(known)
  for (const { id, place } of referencesTo(references, kind)) {
    if (names.has(id) || absent.has(`${kind}:${id}`)) continue
    yield { message: `${message} \`${id}\``, place, help: advice(id, names, noun, otherwise) }
  }
}

export function referencesTo(references: readonly Reference[], kind: NamedThing): Reference[] {
  return references.filter((reference) => reference.kind === kind)
}
