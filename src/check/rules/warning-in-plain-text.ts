import type { Nodes, Paragraph } from 'mdast'
import { plainWarning } from '../../hazard/message-lints.ts'
import { textsOf } from '../../model/machine.ts'
import { isElement } from '../../model/mdx-elements.ts'
import type { Rule } from '../rule.ts'
import { wordsOf } from '../safety-texts.ts'

export const warningInPlainText: Rule = {
  id: 'warning-in-plain-text',
  severity: 'error',
  summary: 'A paragraph begins like a safety message, or is a note that speaks of injury, and is none.',
  why: 'It has no panel, no avoidance and no place in the checks, and looks like any other line.',
  source: 'ANSI Z535.6, in its manner: signal words head safety messages, and a note is not for injury',
  guards: 'people',

  *check({ pages }) {
    for (const page of pages) {
      // Front chapters explain the words.
      if (page.collection === 'front') continue
      for (const { body, source, language } of textsOf(page))
        for (const paragraph of paragraphsOf(body)) {
          if (!beginsWithWord.test(firstText(paragraph))) continue
          const { text, place } = wordsOf(paragraph, source)
          const found = plainWarning(text, language)
          if (!found) continue
          yield {
            message: `\`${text.slice(found.start, found.end)}\` heads a line of plain text`,
            place: place(found.start, found.end),
            help: 'write a `<Safety>` message, or name the hazard: `<Safety hazard="…" />`',
          }
        }
    }
  },
}

/** What costs little to see before a whole paragraph is read: one word and a colon or exclamation mark, or the word alone in bold. */
const beginsWithWord = /^\s*\p{L}{3,}\s*(?:[:!]|$)/u

function firstText(node: Nodes): string {
  if (node.type === 'text') return node.value
  const [first] = 'children' in node ? node.children : []
  return first ? firstText(first) : ''
}

/** Paragraphs outside safety messages. */
function paragraphsOf(node: Nodes): Paragraph[] {
  if (node.type === 'paragraph') return [node]
  if (isElement(node) && node.name === 'Safety') return []
  return 'children' in node ? node.children.flatMap(paragraphsOf) : []
}
