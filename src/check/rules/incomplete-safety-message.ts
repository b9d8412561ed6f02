import type { Nodes } from 'mdast'
import { attributeOf, elementsOf, isElement } from '../../model/mdx-elements.ts'
import { attributePlace } from '../../model/placed-messages.ts'
import type { Rule } from '../rule.ts'

export const incompleteSafetyMessage: Rule = {
  id: 'incomplete-safety-message',
  severity: 'error',
  summary: 'A safety message lacks its hazard, its avoidance or its probabilities.',
  why: 'A reader who is warned without being told of what, or what to do, is not warned.',
  source: 'ANSI Z535.6, in its manner: hazard, consequence, avoidance',
  guards: 'people',

  *check(_, graph) {
    for (const message of graph.safetyMessages()) {
      const { element, place, kind, names, hazards, written } = message
      if (kind === 'directive') {
        if (!element.children.some(says)) yield { message: 'the directive says nothing', place, help: 'write inside it what is to be read or kept' }
        continue
      }
      const missing = partsOf(written.severity, message.harms).filter((name) => !elementsOf(element, name).some((part) => part.children.some(says)))
      const [silent] = hazards.filter((hazard) => hazard.message === undefined)
      const own = element.children.some(says)
      // Without a text of its own, a message has the texts of its hazards, or of the caution of the one it names.
      if (missing.length > 0 && (names.length === 0 || own))
        yield {
          message: `the safety message has no ${missing.map((name) => `\`<${name}>\``).join(' and no ')}`,
          place,
          help: 'write it inside the message, with words in it',
        }
      if (!own && names.length > 1 && silent)
        yield {
          message: `the text of hazard \`${silent.id.value}\` stands in a caution, and cannot be joined with another`,
          place: attributePlace(message, 'hazard'),
          help: 'write one message for each hazard, or the text of this one inside it',
        }
      if (names.length > 0) continue
      if (written.severity === undefined) {
        if (attributeOf(element, 'severity') === undefined)
          yield {
            message: 'the safety message names no hazard and no severity',
            place,
            help: 'write `hazard="…"` with an id of hazards.yaml, or `severity="…"`',
          }
        continue
      }
      const open =
        written.severity === 'death-or-serious-injury'
          ? (['accident', 'injury'] as const).filter((name) => attributeOf(element, name) === undefined)
          : []
      if (open.length > 0)
        yield {
          message: `the safety message does not say ${open.map((name) => `\`${name}\``).join(' and ')}`,
          place,
          note: 'with death or serious injury the signal word depends on both probabilities',
          help: 'write `will` or `could` for each',
        }
    }
  },
}

/** What a message must tell: of damage, what is at risk and what to do; of injury, also what happens. */
function partsOf(severity: string | undefined, harms: readonly { severity: string }[]): string[] {
  const damageOnly = severity === 'property-damage' || (harms.length > 0 && harms.every((harm) => harm.severity === 'property-damage'))
  return damageOnly ? ['Hazard', 'Avoid'] : ['Hazard', 'Consequence', 'Avoid']
}

/** Whether there is anything to read in a part of the message. */
function says(node: Nodes): boolean {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value.trim() !== ''
  if (isElement(node)) return node.children.some(says) || (node.children.length === 0 && node.attributes.length > 0)
  return 'children' in node && node.children.some(says)
}
