import { describe, expect, test } from 'vitest'
import { injuryWords, isInCapitals, isVague, plainWarning, type Span, signalWordsIn, wrongVerbs } from '../../src/hazard/message-lints.ts'
import type { SignalWord } from '../../src/hazard/signal-word.ts'

const cut = (text: string, spans: readonly Span[]) => spans.map(({ start, end }) => text.slice(start, end))

// Source: ANSI Z535.6, clause 4: DANGER takes "will", WARNING and CAUTION take "could". Spanish forms: common practice.
test.each<[SignalWord, string, string, string[]]>([
  ['warning', 'en', 'Contact will cause death.', ['will']],
  ['danger', 'en', 'Contact could cause death.', ['could']],
  ['danger', 'en', 'Contact will kill you.', []],
  ['warning', 'en', 'It could crush you.', []],
  ['caution', 'en', 'Willow dust could hurt, goodwill or not.', []],
  ['notice', 'en', 'The seal will leak.', []],
  ['danger', 'es', 'La tensión podría matarle.', ['podría']],
  ['danger', 'es', 'Morirá o sufrirá lesiones graves.', []],
  ['warning', 'es', 'La carga le aplastará.', ['aplastará']],
  ['warning', 'es', 'Detrás está el azafrán. Podría caer.', []],
  ['warning', 'de', 'Sie werden sterben.', []],
])('%s, %s: %s', (word, language, text, expected) => expect(cut(text, wrongVerbs(text, language, word))).toEqual(expected))

describe('an avoidance that tells no act', () => {
  test.each([
    ['en', 'Be careful.'],
    ['en', 'Always be careful when you work near the belt!'],
    ['en', 'Use caution. Stay alert.'],
    ['en', 'Proceed with extreme caution.'],
    ['es', 'Tenga mucho cuidado al abrir.'],
    ['es', 'Preste atención.'],
  ])('%s: %s', (language, text) => expect(isVague(text, language)).toBe(true))

  test.each([
    ['en', 'Be careful: wear gloves.'],
    ['en', 'Take care that nobody stands under the load.'],
    ['en', 'Be careful not to touch the blade.'],
    ['en', 'Wear gloves. Be careful.'],
    ['en', 'Watch out for steam, and keep your face away.'],
    ['es', 'Tenga cuidado de que nadie esté debajo.'],
    ['es', 'Use guantes.'],
    ['de', 'Vorsicht.'],
    ['en', ''],
  ])('not %s: %s', (language, text) => expect(isVague(text, language)).toBe(false))
})

test.each([
  ['en', 'The guide could crush your hand.', ['crush your hand']],
  ['en', 'Wet contacts can cause electric shock and injury.', ['electric shock', 'injury']],
  ['en', 'The motor can burn out. The belt can hit the frame. No injury follows.', []],
  ['en', 'The crates can cut the belt.', []],
  ['es', 'Podría aplastarle o causar quemaduras.', ['aplastarle', 'quemaduras']],
  ['es', 'Las partes mojadas pueden fallar u oxidarse.', []],
])('harm to a person, %s: %s', (language, text, expected) => expect(cut(text, injuryWords(text, language))).toEqual(expected))

test.each([
  ['en', 'WARNING: hot. DANGER! CAUTION', ['WARNING', 'DANGER', 'CAUTION']],
  ['en', 'Hang the DANGER tag on the lock. A warning lamp. DANGEROUS: no.', []],
  ['es', 'PELIGRO: tensión. ATENCIÓN.', ['PELIGRO', 'ATENCIÓN']],
  ['xx', 'WARNING: hot', []],
])('signal words in a text, %s: %s', (language, text, expected) => expect(cut(text, signalWordsIn(text, language))).toEqual(expected))

test.each([
  ['KEEP HANDS AWAY FROM THE BELT', true],
  ['MANTENGA LAS MANOS LEJOS', true],
  ['Turn DISC001 to OFF', false],
  ['EMERGENCY STOP', false],
  ['DR101, DR201 and DR701', false],
  ['AC 230 V', false],
])('in capitals: %s: %s', (text, expected) => expect(isInCapitals(text)).toBe(expected))

test.each([
  ['en', 'Warning: hot.', 'Warning'],
  ['en', '  DANGER! Keep out.', 'DANGER'],
  ['en', 'Important: it could crush your hand.', 'Important'],
  ['en', 'NOTICE: it could cut your hand.', 'NOTICE'],
  ['en', 'NOTICE: the seal can leak.', undefined],
  ['en', 'Warning lamps: amber.', undefined],
  ['fr', 'Attention : chaud.', 'Attention'],
  ['es', 'Atención: caliente.', 'Atención'],
  ['es', 'Nota: podría quemarse el motor.', undefined],
  ['es', 'Nota: podría aplastarle.', 'Nota'],
  ['pt', 'PERIGO: quente.', undefined],
])('a paragraph that begins like a message, %s: %s', (language, text, expected) => {
  const found = plainWarning(text, language)
  expect(found && text.slice(found.start, found.end)).toBe(expected)
})
