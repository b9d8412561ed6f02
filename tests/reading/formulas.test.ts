import { automatedReadability } from 'automated-readability'
import { colemanLiau } from 'coleman-liau'
import fc from 'fast-check'
import { flesch } from 'flesch'
import { fleschKincaid } from 'flesch-kincaid'
import { gunningFog } from 'gunning-fog'
import { smogFormula } from 'smog-formula'
import { describe, expect, test } from 'vitest'
import * as english from '../../src/reading/formulas/english.ts'
import type { Formula, FormulaCounts } from '../../src/reading/formulas/formula.ts'
import * as otherForms from '../../src/reading/formulas/other-forms.ts'
import * as other from '../../src/reading/formulas/other-languages.ts'

const formulas = { ...english, ...other, ...otherForms }
type Name = keyof typeof formulas

const formulaOf = (name: Name): Formula => formulas[name]
const value = (name: Name, counts: Partial<FormulaCounts>): number => formulaOf(name).value(counts as FormulaCounts)

/** Counts of a text with given averages. */
const averages = (wordsPerSentence: number, syllablesPerWord: number) => ({
  words: 1e6,
  sentences: 1e6 / wordsPerSentence,
  syllables: 1e6 * syllablesPerWord,
})
const perSentence = (polysyllables: number) => ({ sentences: 1, polysyllables })
const of150 = (oneSyllable: number) => ({ oneSyllable, wordTokens: 150 })
const small = { words: 12, sentences: 3, letters: 47, long: 3, unfamiliar: 1 }
const fixture = averages(27.82, 1.0645)
const document = { words: 556, sentences: 18, syllables: 974, letters: 2918, oneSyllable: 316, wordTokens: 556, polysyllables: 124 }
const shares = { words: 1500, sentences: 100, polysyllables: 300, long: 450, oneSyllable: 750 }

const platypus = 'the platypus sentence, published'
const wordless = 'unit tests of Wordless 2025-10, recomputed'
const strainIndex = 'Nirmaldasan 2011, truncated to 2 decimals there'
const korpus = 'fixture of koRpus; averages solved from its own scores'
const korpusCounts = 'counts of the koRpus documentation; value computed'
const computed = 'coefficients of the source; value computed'

/** Formula, counts, score, tolerance, where the score is from. */
const cases: [Name, Partial<FormulaCounts>, number, number, string][] = [
  ['fleschEase', { words: 13, sentences: 1, syllables: 24 }, 37.5, 0.05, platypus],
  ['fleschEase', { words: 16, sentences: 1, syllables: 23 }, 69, 0.05, '“This sentence, taken as a reading passage”, published'],
  ['fleschEase', { words: 6, sentences: 1, syllables: 6 }, 116, 0.2, '“The cat sat on the mat.”, published'],
  ['fleschEase', { words: 1, sentences: 1, syllables: 1 }, 121.22, 0.005, 'published upper bound'],
  ['fleschEase', { words: 2, sentences: 1, syllables: 2 }, 120.205, 0.001, 'readme of npm flesch: 120'],
  ['fleschKincaidGrade', { words: 1, sentences: 1, syllables: 1 }, -3.4, 0.001, 'published lower bound'],
  ['fleschKincaidGrade', { words: 13, sentences: 1, syllables: 24 }, 11.3, 0.05, platypus],
  ['fleschKincaidGrade', { words: 10, sentences: 2, syllables: 10 }, -1.84, 0.001, 'public test suite in Elixir, by hand'],
  ['fleschKincaidGrade', averages(5.7, 1.02), -1.3, 0.05, 'Markman 2008, averages of “Green Eggs and Ham”'],
  ['colemanLiau', { letters: 639, words: 119, sentences: 5 }, 14.5, 0.05, 'abstract of Coleman, Liau 1975, published'],
  ['colemanLiauByCloze', { letters: 639, words: 119, sentences: 5 }, 14.5294, 0.0001, 'the two published steps'],
  ['smogQuick', { sentences: 30, polysyllables: 64 }, 11, 0.001, 'Nirmaldasan 2010'],
  ...(
    [
      [1, 8.47],
      [2, 10.74],
      [3, 12.48],
      [4, 13.95],
      [5, 15.24],
      [6, 16.41],
      [7, 17.49],
      [2.6, 11.83],
      [5.3, 15.6],
    ] as const
  ).map(
    ([polysyllables, score]) =>
      ['smogQuick', perSentence(polysyllables), score, 0.012, strainIndex] as [Name, Partial<FormulaCounts>, number, number, string],
  ),
  ['smog', perSentence(4), 14.554593, 1e-6, 'readme of npm smog-formula'],
  ['smog', { sentences: 30, polysyllables: 30 }, 8.8418, 0.0005, 'McLaughlin 1969, equation D'],
  ['smog', { sentences: 15, polysyllables: 20 }, 9.7256, 0.0005, 'scaled to 30 sentences as McLaughlin does'],
  ['forcast', of150(80), 12, 0.001, 'worked example of readabilityformulas.com'],
  ['forcast', of150(79), 12.1, 0.001, 'passage 15 of Caylor et al. 1973, published'],
  ['forcastRegression', of150(80), 11.63, 0.001, 'Caylor, Sticht 1973 p. 3'],
  ['forcast', of150(150), 5, 0.001, 'bound'],
  ['forcast', of150(0), 20, 0.001, 'bound'],
  ['forcast', { oneSyllable: 60, wordTokens: 100 }, 11, 0.001, 'scaling of koRpus and quanteda'],
  ['automatedReadability', small, -0.9825, 0.0005, wordless],
  ['automatedReadabilityNavy', small, -1.6567, 0.0005, wordless],
  ['gunningFog', { ...small, polysyllables: 1 }, 4.9333, 0.0005, wordless],
  ['gunningFogNavy', { ...small, polysyllables: 0 }, 0.5, 0.0005, wordless],
  ['daleChall1948', small, 5.1507, 0.0005, wordless],
  ['daleChallCloze1995', small, 53.3233, 0.0005, wordless],
  ['lix', small, 29, 0.0005, wordless],
  ['rix', small, 1, 0.0005, 'formula'],
  ['fernandezHuerta', { ...small, syllables: 18 }, 112.76, 0.005, wordless],
  ['szigrisztPazos', { ...small, syllables: 18 }, 109.385, 0.006, wordless],
  ['amstad', { ...small, syllables: 15 }, 102.875, 0.0005, wordless],
  ['kandelMoles207', { ...small, syllables: 16 }, 104.8067, 0.0005, wordless],
  ['douma', { ...small, syllables: 18 }, 87.62, 0.006, wordless],
  ['brouwer', { ...small, syllables: 18 }, 87, 0.0005, wordless],
  ['gulpease', { ...small, letters: 45 }, 126.5, 0.0005, wordless],
  ['fleschVacca', { ...small, syllables: 19 }, 116.8, 0.0005, wordless],
  ['fleschEase', fixture, 88.54, 0.05, korpus],
  ['fleschKincaidGrade', fixture, 7.82, 0.05, korpus],
  ['amstad', fixture, 89.91, 0.05, korpus],
  ['fernandezHuerta', fixture, 114.59, 0.05, korpus],
  ['szigrisztPazos', fixture, 112.7, 0.05, korpus],
  ['kandelMoles209', fixture, 104.63, 0.05, korpus],
  ['douma', fixture, 99, 0.05, korpus],
  ['fleschEase', document, 27.2806, 0.0005, korpusCounts],
  ['fleschKincaidGrade', document, 17.1279, 0.0005, korpusCounts],
  ['colemanLiau', document, 14.1012, 0.0005, korpusCounts],
  ['automatedReadability', document, 18.7335, 0.0005, korpusCounts],
  ['forcast', document, 11.4748, 0.0005, korpusCounts],
  ['smog', document, 18.1232, 0.0005, korpusCounts],
  ['fleschKincaidGrade', averages(20, 1.6), 11.09, 0.005, 'limits of MIL-M-38784A and MIL-DTL-81927C; value computed'],
  ['fleschKincaidGrade', averages(17, 1.5), 8.74, 0.005, 'desired values of the same; value computed'],
  ['armyClarity', { words: 150, sentences: 10, polysyllables: 22 }, 29.6667, 0.0005, 'method of DA Pam 600-67 § 4-3; value computed'],
  ['wiener1', shares, 7.759, 0.0005, computed],
  ['wiener2', shares, 7.877, 0.0005, computed],
  ['wiener3', shares, 7.6691, 0.0005, computed],
  ['wiener4', shares, 7.779, 0.0005, computed],
  ['martins', averages(10, 2), 69.485, 0.0005, computed],
]

test.each(cases)('%s of %o is %d ± %d: %s', (name, counts, score, tolerance) => {
  expect(Math.abs(value(name, counts) - score)).toBeLessThanOrEqual(tolerance)
})

test('every formula has a case and a source', () => {
  expect([...new Set(cases.map(([name]) => name))].sort()).toEqual(Object.keys(formulas).sort())
  for (const { source } of Object.values(formulas)) expect(source).toMatch(/\d{4}|§/)
})

test('quick SMOG, rounded, is 13 for 95 and for 110 hard words in 30 sentences, as in the method box of McLaughlin 1969', () => {
  expect([95, 110].map((polysyllables) => Math.round(value('smogQuick', { sentences: 30, polysyllables })))).toEqual([13, 13])
})

describe('mistakes that libraries are known for are not made', () => {
  test('0.058 for 0.0588 in Coleman–Liau would give 14.10', () => {
    expect(value('colemanLiau', { letters: 639, words: 119, sentences: 5 })).toBeGreaterThan(14.5)
  })
  test('3.1291 inside the root of SMOG would give 6.85', () => {
    expect(value('smog', { sentences: 30, polysyllables: 40 })).toBeGreaterThan(9.7)
  })
  test('the short form of Coleman–Liau follows from the two steps', () => {
    // One letter more for 100 words, one sentence more, and the rest.
    const at = (letters: number, sentences: number) => value('colemanLiauByCloze', { words: 100, letters, sentences })
    expect(at(1, 0) - at(0, 0)).toBeCloseTo(0.0588, 4)
    expect(at(0, 1) - at(0, 0)).toBeCloseTo(-0.29587, 4)
    expect(at(0, 0)).toBeCloseTo(-15.8008, 3)
  })
})

/** Counts of a text that can be. */
const texts = fc
  .record({
    words: fc.integer({ min: 1, max: 5000 }),
    sentencesShare: fc.double({ min: 0, max: 1, noNaN: true }),
    perWord: fc.double({ min: 1, max: 6, noNaN: true }),
  })
  .map(({ words, sentencesShare, perWord }) => ({
    words,
    sentences: Math.max(1, Math.round(words * sentencesShare)),
    syllables: Math.round(words * perWord),
    letters: Math.max(1, Math.round(words * perWord * 2)),
    polysyllables: Math.round((words * perWord) / 6),
  }))

describe('on 1,000 random counts', () => {
  test.each<[Name, string, (counts: { words: number; sentences: number; syllables: number; letters: number; polysyllables: number }) => number]>([
    ['fleschEase', 'flesch', ({ words, sentences, syllables }) => flesch({ word: words, sentence: sentences, syllable: syllables })],
    [
      'fleschKincaidGrade',
      'flesch-kincaid',
      ({ words, sentences, syllables }) => fleschKincaid({ word: words, sentence: sentences, syllable: syllables }),
    ],
    ['colemanLiau', 'coleman-liau', ({ words, sentences, letters }) => colemanLiau({ word: words, sentence: sentences, letter: letters })],
    [
      'automatedReadability',
      'automated-readability',
      ({ words, sentences, letters }) => automatedReadability({ word: words, sentence: sentences, character: letters }),
    ],
    [
      'gunningFog',
      'gunning-fog',
      ({ words, sentences, polysyllables }) => gunningFog({ word: words, sentence: sentences, complexPolysillabicWord: polysyllables }),
    ],
    ['smog', 'smog-formula', ({ sentences, polysyllables }) => smogFormula({ sentence: sentences, polysillabicWord: polysyllables })],
  ])('%s agrees with npm %s to 1e-9', (name, _, oracle) => {
    fc.assert(
      fc.property(texts, (counts) => {
        const score = oracle(counts)
        expect(Math.abs(value(name, counts) - score) / Math.max(1, Math.abs(score))).toBeLessThanOrEqual(1e-9)
      }),
      { numRuns: 1000 },
    )
  })

  test.each(Object.keys(formulas) as Name[])('%s is a finite number', (name) => {
    fc.assert(
      fc.property(texts, fc.double({ min: 0, max: 1, noNaN: true }), (counts, share) => {
        const rest = Math.round(counts.words * share)
        expect(value(name, { ...counts, oneSyllable: rest, long: rest, unfamiliar: rest, wordTokens: counts.words })).toSatisfy(Number.isFinite)
      }),
    )
  })
})
