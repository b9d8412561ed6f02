import type { Nodes } from 'mdast'
import { textsOf } from '../../model/machine.ts'
import { attributeOf, elementsOf, isElement } from '../../model/mdx-elements.ts'
import type { Rule } from '../rule.ts'

export const incompleteSafetyMessage: Rule = {
  id: 'incomplete-safety-message',
  severity: 'error',
  summary: 'A safety message lacks its hazard, its avoidance or its probabilities.',
  why: 'A reader who is warned without being told of what, or what to do, is not warned.',
  source: 'ANSI Z535.6, in its manner: hazard, consequence, avoidance',
  guards: 'people',

  *check({ pages }) {
    for (const { source, body } of pages.flatMap(textsOf)) {
      for (const message of elementsOf(body, 'Safety')) {
        const start = message.position?.start.offset ?? 0
        const place = source.place(start + 1, start + '<Safety'.length)
        const severity = attributeOf(message, 'severity')
        const parts = severity === 'property-damage' ? ['Hazard', 'Avoid'] : ['Hazard', 'Consequence', 'Avoid']
        const missing = parts.filter((name) => !message.children.some((child) => elementsOf(child, name).some((part) => says(part))))
        if (missing.length > 0)
          yield {
            message: `the safety message has no ${missing.map((name) => `\`<${name}>\``).join(' and no ')}`,
            place,
            help: 'write it inside the message, with words in it',
          }
        const open = severity === 'death-or-serious-injury' ? ['accident', 'injury'].filter((name) => attributeOf(message, name) === undefined) : []
        if (open.length > 0)
          yield {
            message: `the safety message does not say ${open.map((name) => `\`${name}\``).join(' and ')}`,
            place,
            note: 'with death or serious injury the signal word depends on both probabilities',
            help: 'write `will` or `could` for each',
          }
      }
    }
  },
}

/** Whether there is anything to read in a part of the message. */
function says(node: Nodes): boolean {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value.trim() !== ''
  if (isElement(node)) return node.children.some(says) || (node.children.length === 0 && node.attributes.length > 0)
  return 'children' in node && node.children.some(says)
}
