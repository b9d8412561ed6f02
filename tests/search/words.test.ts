import { expect, test } from 'vitest'
import { synonymsOf } from '../../src/search/synonyms.ts'
import { fold, vocabularyOf, wordsOf } from '../../src/search/words.ts'

test('words are compared without case, accents and signs', () => {
  expect(fold('Válvula')).toBe('valvula')
  expect(fold('Pre-Wash')).toBe('prewash')
  expect(wordsOf('Rinse the pre-wash tank (60 °C), niño.')).toEqual(['rinse', 'the', 'pre', 'wash', 'tank', '60', 'c', 'nino'])
})

test('a slip is corrected to the word that most pages have', () => {
  const { knows, correct } = vocabularyOf(['conveyor', 'drain', 'drainage', 'drawn', 'strainer', 'zeolite'], '5302 40'.replace(' ', ''), ['photoeye'])
  expect(knows('conv')).toBe(true)
  expect(knows('convx')).toBe(false)
  expect(correct('convejor')).toBe('conveyor')
  expect(correct('stainer')).toBe('strainer')
  expect(correct('drayn')).toBe('drain')
  expect(correct('phtoeye')).toBe('photoeye')
  // A word of one page: one edit is enough to be sure, two are not.
  expect(correct('zeolit')).toBe('zeolite')
  expect(correct('zelit')).toBeUndefined()
  // Too short to tell.
  expect(correct('drn')).toBeUndefined()
})

const synonyms = synonymsOf([
  ['photoelectric sensor', 'photo eye', 'light barrier'],
  ['emergency stop', 'e-stop', 'mushroom button'],
  ['lockout', 'LOTO', 'lockout'],
])
const none = () => false
const used = (query: string, isKnown = none) => synonyms.find(query.split(' '), isKnown).map(({ typed, used }) => `${typed}: ${used}`)

test.each([
  ['photoeye', ['photoeye: photoelectric sensor']],
  ['photo eye', ['photo eye: photoelectric sensor']],
  ['check photo-eyes now', ['photo-eyes: photoelectric sensor']],
  ['estop', ['estop: emergency stop']],
  ['E-Stop', ['E-Stop: emergency stop']],
  ['loto mushroom button', ['loto: lockout', 'mushroom button: emergency stop']],
  ['lockout', []],
  ['eye', []],
])('`%s` has the wordings %j', (query, expected) => {
  expect(used(query)).toEqual(expected)
})

test('a wording that is still being typed counts, unless pages have such a word', () => {
  expect(used('mushr')).toEqual(['mushr: emergency stop'])
  expect(used('mushr', () => true)).toEqual([])
  expect(used('mushr blue')).toEqual([])
})
