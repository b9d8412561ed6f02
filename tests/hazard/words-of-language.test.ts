import { expect, test } from 'vitest'
import { languagesWithWords, wordsOfLanguage } from '../../src/hazard/words-of-language.ts'

// Sources: ANSI Z535.6 and ISO 3864-2 (English); labels to ISO 3864-2 (German); a secondary text each for French and
// Italian, with AVIS from memory; Spanish from memory.
test.each([
  ['en', 'DANGER', 'WARNING', 'CAUTION', 'NOTICE'],
  ['de', 'GEFAHR', 'WARNUNG', 'VORSICHT', 'HINWEIS'],
  ['fr', 'DANGER', 'AVERTISSEMENT', 'ATTENTION', 'AVIS'],
  ['it', 'PERICOLO', 'AVVERTENZA', 'ATTENZIONE', 'AVVISO'],
  ['es', 'PELIGRO', 'ADVERTENCIA', 'ATENCIÓN', 'AVISO'],
])('%s', (language, danger, warning, caution, notice) => expect(wordsOfLanguage(language)).toEqual({ danger, warning, caution, notice }))

test.each(languagesWithWords)('the four words of %s differ and stand in capitals', (language) => {
  const words = Object.values(wordsOfLanguage(language) ?? {})
  expect(new Set(words).size).toBe(4)
  for (const word of words) expect(word).toBe(word.toUpperCase())
})

test.each(['pt', 'xx', '', 'constructor', 'EN'])('%s has no table, and no English in its place', (language) =>
  expect(wordsOfLanguage(language)).toBeUndefined(),
)
