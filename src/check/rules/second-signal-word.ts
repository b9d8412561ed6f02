import { signalWordsIn } from '../../hazard/message-lints.ts'
import type { Rule } from '../rule.ts'
import { safetyTexts } from '../safety-texts.ts'

export const secondSignalWord: Rule = {
  id: 'second-signal-word',
  severity: 'error',
  summary: 'The text of a safety message holds a signal word besides the one of its panel.',
  why: 'Two words tell two levels, and a reader takes the weaker one.',
  source: 'common practice: one message, one signal word',
  guards: 'people',

  *check(_machine, graph) {
    for (const { language, text, place } of safetyTexts(graph)) {
      const [first] = signalWordsIn(text, language)
      if (!first) continue
      yield {
        message: `the text of the message says \`${text.slice(first.start, first.end)}\``,
        place: place(first.start, first.end),
        note: 'the panel shows the word that follows from severity and probabilities',
        help: 'take the word out of the text',
      }
    }
  },
}
