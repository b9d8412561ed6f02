import { isInCapitals } from '../../hazard/message-lints.ts'
import type { Rule } from '../rule.ts'
import { safetyTexts } from '../safety-texts.ts'

export const messageInCapitals: Rule = {
  id: 'message-in-capitals',
  severity: 'warning',
  summary: 'A part of a safety message is written in capitals throughout.',
  why: 'Capitals all have one shape, and a text of them is read more slowly and less often.',
  source: 'ANSI Z535.6, in its manner, from memory: message text in mixed case',

  *check(_machine, graph) {
    for (const { part, text, place } of safetyTexts(graph))
      if (isInCapitals(text))
        yield {
          message: `the ${part === 'avoid' ? 'avoidance' : part} stands in capitals`,
          place: place(0, text.length),
          help: 'write it as a sentence; only the signal word is set in capitals',
        }
  },
}
