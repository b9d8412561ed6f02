import { describe, expect, test } from 'vitest'
import { chapters, type Instructions, instructionFaults } from '../../src/instructions/instruction-faults.ts'
import { legalBasis, onlineUntilAtLeast } from '../../src/instructions/legal-basis.ts'

/** Sound under the Regulation. */
const sound: Instructions = {
  placedOnMarket: '2027-03-01',
  expectedLifeYears: 10,
  form: 'digital',
  digital: { onlineUntil: '2037-03-01', accessOn: ['machine'], canBeSaved: true },
  paper: { isFree: true, withinDays: 28 },
  original: ['en'],
  languages: ['en', 'es'],
  chapters,
}
const digital = sound.digital as NonNullable<Instructions['digital']>
const faults = (change: Partial<Instructions>) => instructionFaults({ ...sound, ...change }).map(({ key, clause }) => [key, clause])

test('what is sound has no fault', () => expect(faults({})).toEqual([]))

// Source: Regulation (EU) 2023/1230, application date as corrected in OJ L 169, 4.7.2023.
test.each([
  ['2027-01-19', 'Directive 2006/42/EC'],
  ['2027-01-20', 'Regulation (EU) 2023/1230'],
] as const)('I01: placed on the market on %s: %s', (day, law) => expect(legalBasis(day)).toBe(law))

describe('a digital manual. Source: Regulation (EU) 2023/1230, Article 10(7)', () => {
  test('I02: online for six years', () => {
    expect(faults({ digital: { ...digital, onlineUntil: '2033-03-01' } })).toEqual([
      ['digital.onlineUntil', expect.stringContaining('Article 10(7)(c)')],
    ])
  })
  test('I03: online for ten years, with an expected life of 25', () => {
    expect(faults({ expectedLifeYears: 25 })).toEqual([['digital.onlineUntil', expect.stringContaining('Article 10(7)(c)')]])
    expect(faults({ expectedLifeYears: 25, digital: { ...digital, onlineUntil: '2052-03-01' } })).toEqual([])
  })
  test('the day follows from the longer of the two, and part of a year counts', () => {
    expect(onlineUntilAtLeast('2027-03-01', 2)).toBe('2037-03-01')
    expect(onlineUntilAtLeast('2028-02-29', 12.5)).toBe('2041-02-28')
  })
  test('I04: no mark tells how to reach it', () => {
    expect(faults({ digital: { ...digital, accessOn: [] } })).toEqual([['digital.accessOn', expect.stringContaining('Article 10(7)(a)')]])
  })
  test('I05: it can be read on the screen alone', () => {
    expect(faults({ digital: { ...digital, canBeSaved: false } })).toEqual([['digital.canBeSaved', expect.stringContaining('Article 10(7)(b)')]])
  })
  test('I06: paper in six weeks, or at a price', () => {
    expect(faults({ paper: { isFree: true, withinDays: 42 } })).toEqual([['paper.withinDays', expect.stringContaining('third subparagraph')]])
    expect(faults({ paper: { isFree: false, withinDays: 14 } })).toEqual([['paper.isFree', expect.stringContaining('third subparagraph')]])
    expect(faults({ paper: undefined })).toEqual([['form', expect.stringContaining('third subparagraph')]])
  })
  test('nothing is said of it: one fault, and not one for each part', () => {
    expect(faults({ digital: undefined })).toEqual([['form', expect.stringContaining('Article 10(7)(a) to (c)')]])
  })
  test('a manual on paper, or under the Directive, is not asked for any of it', () => {
    const nothing = { digital: undefined, paper: undefined }
    expect(faults({ ...nothing, form: 'paper' })).toEqual([])
    expect(faults({ ...nothing, placedOnMarket: '2027-01-19' })).toEqual([])
  })
})

describe('I07: original and translation. Source: Directive 2006/42/EC, annex I, 1.7.4.1', () => {
  const underDirective = { placedOnMarket: '2026-06-01' }
  test('a translated manual of which nothing tells the original', () => {
    expect(faults({ ...underDirective, original: [] })).toEqual([['original', expect.stringContaining('1.7.4.1')]])
    expect(faults({ ...underDirective, original: ['de'] })).toEqual([['original', expect.stringContaining('1.7.4.1')]])
  })
  test('no fault in one language, with the original named, or under the Regulation', () => {
    expect(faults({ ...underDirective, original: [], languages: ['en'] })).toEqual([])
    expect(faults(underDirective)).toEqual([])
    expect(faults({ original: [] })).toEqual([])
  })
})

// Source: Directive 2006/42/EC, annex I, 1.7.4.2, and the same letters of Regulation (EU) 2023/1230, annex III.
test('I08: intended use, misuse, residual risks and protective equipment', () => {
  expect(faults({ chapters: [] }).map(([, clause]) => clause?.slice(-3))).toEqual(['(g)', '(h)', '(l)', '(m)'])
  expect(faults({ chapters: ['misuse', 'residualRisks', 'protectiveEquipment'], placedOnMarket: '2026-06-01' })).toEqual([
    ['chapters', 'Directive 2006/42/EC, annex I, 1.7.4.2(g)'],
  ])
})
