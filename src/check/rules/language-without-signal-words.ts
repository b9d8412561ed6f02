import { languagesWithWords, wordsOfLanguage } from '../../hazard/words-of-language.ts'
import type { Rule } from '../rule.ts'

export const languageWithoutSignalWords: Rule = {
  id: 'language-without-signal-words',
  severity: 'error',
  summary: 'The manual is to be in a language whose signal words are not known.',
  why: 'The words are fixed terms. Another language in their place, or a free translation, warns of another level.',
  source: 'common practice; ANSI Z535.6 and ISO 3864-2, in their manner',
  guards: 'people',

  *check({ file, placeOf }) {
    const { source, translations = [] } = file.languages
    for (const [index, language] of [source, ...translations].entries()) {
      if (wordsOfLanguage(language)) continue
      yield {
        message: `the signal words of \`${language}\` are not known`,
        place: placeOf(['languages', ...(index === 0 ? ['source'] : ['translations', index - 1])]),
        note: `they are known for ${languagesWithWords.join(', ')}`,
        help: 'have the four words stated for the language, and add them in `src/hazard/words-of-language.ts`',
      }
    }
  },
}
