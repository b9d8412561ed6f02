import { verbIn, wrongVerbs } from '../../hazard/message-lints.ts'
import type { Rule } from '../rule.ts'
import { safetyTexts } from '../safety-texts.ts'

export const wrongConsequenceVerb: Rule = {
  id: 'wrong-consequence-verb',
  severity: 'error',
  summary: 'The consequence of a safety message says `could` under DANGER, or `will` under WARNING or CAUTION.',
  why: 'The word says how sure the harm is. A text that says otherwise makes the reader doubt both.',
  source: 'ANSI Z535.6, clause 4, in its manner: definitions of the signal words',
  guards: 'people',

  *check(_machine, graph) {
    for (const { part, word, language, text, place } of safetyTexts(graph)) {
      // Spanish tells in the same sentence what the hazard does and what the reader does.
      const [first] = part === 'consequence' && word ? wrongVerbs(text, language, word) : []
      if (!first || !word) continue
      yield {
        message: `under \`${word}\` the consequence says \`${text.slice(first.start, first.end)}\``,
        place: place(first.start, first.end),
        note: 'danger: the harm will happen; warning and caution: it could happen',
        help: `write it with ${verbIn(language, word)}, or correct severity and probabilities if the harm is as sure as the text says`,
      }
    }
  },
}
