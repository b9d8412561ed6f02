import { expect, test } from 'vitest'
import { indexTerms, planQuery } from '../../src/search/plan-query.ts'
import { entries, synonyms } from './site.ts'

const words = [
  'cold',
  'converter',
  'drain',
  'drive',
  'emergency',
  'frequency',
  'lift',
  'lockout',
  'part',
  'pressure',
  'stop',
  'strainer',
  'tank',
  'wash',
]
const index = indexTerms(
  { entries: entries.filter(({ language }) => language === 'en'), pages: [], words, counts: '1'.repeat(words.length), synonyms: synonyms.en ?? [] },
  'en',
)

function plan(query: string) {
  const { searches, notes } = planQuery(index, query)
  return {
    texts: searches.map(({ text }) => text),
    notes: notes.map((note) => ('used' in note ? `${note.typed}: ${note.used}` : `no ${note.typed}`)),
  }
}

test.each([
  ['wash tank', ['wash tank'], []],
  ['Wash, tank!', ['Wash tank'], []],
  // A slip is corrected; another ending of a word is searched without saying so.
  ['straner', ['strainer'], ['straner: strainer']],
  ['How is the presure of the wsah?', ['pressure wash'], ['presure: pressure', 'wsah: wash']],
  ['tanks', ['tank'], []],
  ['the', ['the'], []],
  // A word that no page has is left out, not answered with another.
  ['zeppelin', [], ['no zeppelin']],
  ['zeppelin tank', ['tank'], ['no zeppelin']],
  // Other wordings; what was typed is searched too where pages have it.
  ['VFD', ['frequency converter'], ['VFD: frequency converter']],
  ['lift drive', ['lift frequency converter', 'lift drive'], ['drive: frequency converter']],
  ['e-stop', ['emergency stop'], ['e-stop: emergency stop']],
  ['driv', ['driv'], []],
  // A slip in another wording.
  ['invertor', ['frequency converter'], ['invertor: inverter', 'inverter: frequency converter']],
  // Names in full; words that say the kind need not stand on the page.
  ['alarm 217', ['a0217'], []],
  ['-B12', ['s1c2b12'], []],
  ['PRS', ['PRS'], []],
  ['PRS-1', ['PRS1'], []],
  ['part strainer', ['part strainer', 'strainer'], []],
  // Two words that the pages write as one.
  ['lock out lift', ['lockout lift', 'lift'], []],
  ['Locking out the lift', ['lockout lift', 'lift'], []],
  ['p', [], []],
  ['', [], []],
  ['-', [], []],
])('`%s` looks for %j', (query, texts, notes) => {
  expect(plan(query)).toEqual({ texts, notes })
})
