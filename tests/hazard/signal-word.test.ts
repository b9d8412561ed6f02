import { describe, expect, test } from 'vitest'
import { type Probability, type Severity, signalWord, signalWords } from '../../src/hazard/signal-word.ts'

// Source: ANSI Z535.6-2006, annex C4.1 (matrices) and ANSI Z535.4-2011, annex E. The cell with two "will"
// follows from the definition of DANGER in clause 4.
test.each<[Severity, Probability, Probability, string]>([
  ['death-or-serious-injury', 'will', 'will', 'danger'],
  ['death-or-serious-injury', 'will', 'could', 'warning'],
  ['death-or-serious-injury', 'could', 'will', 'warning'],
  ['death-or-serious-injury', 'could', 'could', 'warning'],
  ['minor-or-moderate-injury', 'will', 'will', 'caution'],
  ['minor-or-moderate-injury', 'could', 'could', 'caution'],
  ['property-damage', 'will', 'will', 'notice'],
  ['property-damage', 'could', 'could', 'notice'],
])('%s, accident %s, injury %s: %s', (severity, accident, injury, word) => {
  expect(signalWord({ severity, accident, injury })).toBe(word)
})

describe('signal words of a language', () => {
  test.each(Object.keys(signalWords))('%s: all four differ', (language) => {
    expect(new Set(Object.values(signalWords[language] ?? {})).size).toBe(4)
  })
})
