import { injuryWords } from '../../hazard/message-lints.ts'
import type { Rule } from '../rule.ts'
import { safetyTexts } from '../safety-texts.ts'

export const injuryUnderNotice: Rule = {
  id: 'injury-under-notice',
  severity: 'error',
  summary: 'A message about damage to property speaks of harm to a person.',
  why: 'NOTICE tells the reader that nobody can be hurt.',
  source: 'ANSI Z535.6, clause 4, in its manner: NOTICE is not for injury',
  guards: 'people',

  *check(_machine, graph) {
    for (const { part, word, language, text, place } of safetyTexts(graph)) {
      const [first] = word === 'notice' && part !== 'avoid' ? injuryWords(text, language) : []
      if (!first) continue
      yield {
        message: `a message about property damage says \`${text.slice(first.start, first.end)}\``,
        place: place(first.start, first.end),
        help: 'give the message the severity of the injury, or split it into one about people and one about damage',
      }
    }
  },
}
