import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { panelOf } from '../../src/hazard/panel.ts'
import {
  compareWords,
  consequenceVerb,
  greatestWord,
  type Harm,
  inOrderOfHarm,
  type Probability,
  type Severity,
  signalWord,
  warnsOfInjury,
} from '../../src/hazard/signal-word.ts'

const probabilities: readonly Probability[] = ['could', 'will']
const severities: readonly Severity[] = ['property-damage', 'minor-or-moderate-injury', 'death-or-serious-injury']
const pairs = probabilities.flatMap((accident) => probabilities.map((injury) => ({ accident, injury })))
const z535 = (harm: Harm) => {
  const { ground, letters, italic, alert } = panelOf(signalWord(harm), 'z535')
  return { word: signalWord(harm), ground, letters, italic, alert: alert !== undefined }
}

describe('the word of a harm', () => {
  // Source: ANSI Z535.6-2006, annex C4.1 (matrices) and ANSI Z535.4-2011, annex E. The cell with two "will"
  // follows from the definition of DANGER in clause 4. Colours: ANSI Z535.4, the italic of NOTICE from an explainer.
  const [red, orange, yellow, blue, black, white] = ['#c8102e', '#ff8200', '#ffd100', '#005a98', '#000000', '#ffffff']
  test.each<[Severity, Probability, Probability, object]>([
    ['death-or-serious-injury', 'will', 'will', { word: 'danger', ground: red, letters: white, italic: false, alert: true }],
    ['death-or-serious-injury', 'will', 'could', { word: 'warning', ground: orange, letters: black, italic: false, alert: true }],
    ['death-or-serious-injury', 'could', 'will', { word: 'warning', ground: orange, letters: black, italic: false, alert: true }],
    ['death-or-serious-injury', 'could', 'could', { word: 'warning', ground: orange, letters: black, italic: false, alert: true }],
    ...pairs.map(({ accident, injury }): [Severity, Probability, Probability, object] => [
      'minor-or-moderate-injury',
      accident,
      injury,
      { word: 'caution', ground: yellow, letters: black, italic: false, alert: true },
    ]),
    ...pairs.map(({ accident, injury }): [Severity, Probability, Probability, object] => [
      'property-damage',
      accident,
      injury,
      { word: 'notice', ground: blue, letters: white, italic: true, alert: false },
    ]),
  ])('%s, accident %s, injury %s', (severity, accident, injury, expected) => expect(z535({ severity, accident, injury })).toEqual(expected))

  const harm = fc.record({
    severity: fc.constantFrom(...severities),
    accident: fc.constantFrom(...probabilities),
    injury: fc.constantFrom(...probabilities),
  })
  const least = (from: Harm, to: Harm) => expect(compareWords(signalWord(to), signalWord(from))).toBeLessThanOrEqual(0)

  test('never falls when the severity rises', () => {
    fc.assert(
      fc.property(harm, fc.constantFrom(...severities), (it, severity) => {
        if (severities.indexOf(severity) >= severities.indexOf(it.severity)) least(it, { ...it, severity })
      }),
    )
  })

  test('never falls when a probability rises', () => {
    fc.assert(
      fc.property(harm, (it) => {
        least(it, { ...it, accident: 'will' })
        least(it, { ...it, injury: 'will' })
      }),
    )
  })

  test('of several harms is that of the greatest, in any order', () => {
    fc.assert(
      fc.property(fc.array(harm, { minLength: 1 }), (harms) => {
        const word = greatestWord(harms)
        expect(harms.map(signalWord)).toContain(word)
        for (const it of harms) expect(compareWords(word ?? 'notice', signalWord(it))).toBeLessThanOrEqual(0)
        expect(greatestWord(harms.toReversed())).toBe(word)
      }),
    )
  })
})

test('one message on two hazards takes the greater word', () => {
  // Source: ANSI Z535.6-2006, annex C4.1, text to the matrices.
  const minor: Harm = { severity: 'minor-or-moderate-injury', accident: 'could', injury: 'could' }
  expect(greatestWord([minor, { severity: 'death-or-serious-injury', accident: 'could', injury: 'could' }])).toBe('warning')
  expect(greatestWord([])).toBeUndefined()
})

test('a group is in the order of harm', () => {
  // Common practice.
  expect((['notice', 'caution', 'danger', 'warning'] as const).toSorted(compareWords)).toEqual(['danger', 'warning', 'caution', 'notice'])
})

test('DANGER says will, the other words of injury could', () => {
  // Source: ANSI Z535.4 and Z535.6, clause 4.
  expect(inOrderOfHarm.map((word) => [word, consequenceVerb(word), warnsOfInjury(word)])).toEqual([
    ['danger', 'will', true],
    ['warning', 'could', true],
    ['caution', 'could', true],
    ['notice', 'could', false],
  ])
})
