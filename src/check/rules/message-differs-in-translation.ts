import { greatestWord } from '../../hazard/signal-word.ts'
import type { PlacedMessage } from '../../model/placed-messages.ts'
import type { Rule } from '../rule.ts'

export const messageDiffersInTranslation: Rule = {
  id: 'message-differs-in-translation',
  severity: 'error',
  summary: 'A safety message has another signal word, another hazard or other signs in a translation.',
  why: 'The readers of one language are warned less than the others.',
  source: 'common practice: the same messages in all languages',
  guards: 'people',

  *check(_, graph) {
    const ofPages = Map.groupBy(graph.safetyMessages(), ({ page }) => page)
    for (const [page, messages] of ofPages) {
      const byLanguage = Map.groupBy(messages, ({ text }) => text.language)
      const source = byLanguage.get(page.language) ?? []
      for (const [language, translated] of byLanguage) {
        // Where their number differs, the translation is not complete, and nothing tells which stands for which.
        if (language === page.language || translated.length !== source.length) continue
        for (const [index, message] of translated.entries()) {
          const original = source[index]
          const what = original && difference(original, message)
          if (!original || !what) continue
          yield {
            message: `the message has ${what} than in \`${page.language}\``,
            place: message.place,
            related: [{ label: `the message in \`${page.language}\``, place: original.place }],
            help: 'write the attributes of `<Safety>` as in the source, or correct them there',
          }
        }
      }
    }
  },
}

function difference(source: PlacedMessage, message: PlacedMessage): string | undefined {
  const [word, other] = [greatestWord(source.harms), greatestWord(message.harms)]
  if (word !== other && word && other) return `another signal word, \`${other}\` and not \`${word}\`,`
  if (source.names.join(' ') !== message.names.join(' ')) return 'another hazard'
  return source.symbols.join(' ') === message.symbols.join(' ') ? undefined : 'other signs'
}
