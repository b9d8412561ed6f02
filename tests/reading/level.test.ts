import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Block } from '../../src/reading/block.ts'
import { countsOf } from '../../src/reading/counts.ts'
import { isTooHard, levelOf } from '../../src/reading/level.ts'
import { measuresOf, scaledMeasures } from '../../src/reading/measures.ts'

const prose = (text: string, times = 1): Block[] => Array.from({ length: times }, () => ({ kind: 'paragraph', text }))
const sentence = 'Close the drain valve and wait until the tank is full.'
const wordsOfSentence = 11

describe('a page without prose', () => {
  test.each([[[]], [prose('')], [prose('24')], [prose('Oil level')]])('%j has no level and no measure', (blocks) => {
    const counts = countsOf(blocks, 'en')
    expect([levelOf(counts, 'en'), measuresOf(counts, 'en')]).toEqual([{ none: 'no prose' }, { none: 'no prose' }])
  })

  test('of nothing but numbers and tags has no FORCAST, since no share of words can be taken', () => {
    const measures = measuresOf(countsOf(prose('PX-104 = 24 V DC, 6 bar.'), 'en'), 'en')
    expect(Object.keys(measures)).toEqual(['fleschKincaidGrade', 'fleschEase', 'gunningFog', 'smog', 'colemanLiau', 'ari', 'lix', 'rix'])
  })
})

describe('length of the text', () => {
  test.each([
    [9, false, false],
    [10, true, false],
    [13, true, false],
    [14, true, true],
  ])(`%d sentences of ${wordsOfSentence} words: reliable %s, enforced %s`, (times, reliable, enforced) => {
    const level = levelOf(countsOf(prose(sentence, times), 'en'), 'en')
    expect(level).toEqual({
      measure: 'fleschKincaidGrade',
      scale: 'grade',
      value: expect.closeTo(0.39 * 11 + 11.8 * (12 / 11) - 15.59, 9),
      reliable,
      enforced,
    })
  })

  test('says what is scaled up: FORCAST under 150 words, SMOG under 30 sentences', () => {
    const scaled = [1, 14, 30].map((times) => scaledMeasures(countsOf(prose(sentence, times), 'en')))
    expect(scaled).toEqual([['forcast', 'smog'], ['smog'], []])
  })

  test('does not move a score: the same sentence again has the same measures', () => {
    const [once, often] = [2, 40].map((times) => measuresOf(countsOf(prose(sentence, times), 'en'), 'en'))
    for (const [name, score] of Object.entries(once ?? {})) expect(often, name).toMatchObject({ [name]: expect.closeTo(score as number, 9) })
  })
})

describe('a limit', () => {
  const level = levelOf(countsOf(prose(sentence, 20), 'en'), 'en')
  if ('none' in level) throw new Error('the text has prose')
  test.each([
    ['equal to the level', level, level.value, false],
    ['a hair below the level, which a report would show as the same', level, level.value - 1e-9, true],
    ['below a level that is not enforced', { ...level, enforced: false }, level.value - 1, false],
    ['an ease above the limit', { ...level, scale: 'ease' as const }, level.value - 1, false],
    ['an ease below the limit', { ...level, scale: 'ease' as const }, level.value + 1, true],
  ])('%s', (_, its, limit, tooHard) => expect(isTooHard(its, limit)).toBe(tooHard))
})

const longText = prose('Cierre la válvula de entrada y espere hasta que la presión baje a cero.', 20)
const ofEnglishOnly = ['fleschKincaidGrade', 'forcast', 'fleschEase', 'gunningFog', 'smog', 'colemanLiau', 'ari']

describe('a text in another language', () => {
  test.each([
    ['es', 'szigrisztPazos', 'ease'],
    ['es-MX', 'szigrisztPazos', 'ease'],
    ['de', 'wiener1', 'school-year'],
    ['fr', 'kandelMoles', 'ease'],
    ['it', 'gulpease', 'ease'],
    ['pl', 'lix', 'lix'],
    ['constructor', 'lix', 'lix'],
  ])('%s has %s on the scale of %s, and no English formula', (language, measure, scale) => {
    const counts = countsOf(longText, language)
    expect(levelOf(counts, language)).toMatchObject({ measure, scale, reliable: true })
    expect(Object.keys(measuresOf(counts, language)).filter((name) => ofEnglishOnly.includes(name))).toEqual([])
  })
})

test('no blocks at all give a number that is not one', () => {
  const piece = fc.oneof(fc.string(), fc.constantFrom('The valve is open. ', '24 V DC ', 'etc. ', '4 ', '… ', '(a) '))
  const text = fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join(''))
  const blocks = fc.array(fc.record({ kind: fc.constantFrom('paragraph' as const, 'item' as const, 'step' as const), text }), { maxLength: 4 })
  fc.assert(
    fc.property(blocks, fc.constantFrom('en', 'es', 'de', 'fr', 'it', 'pl'), (given, language) => {
      const counts = countsOf(given, language)
      const measures = measuresOf(counts, language)
      expect(counts.words === 0).toBe('none' in measures)
      for (const score of Object.values(measures)) expect(score === 'no prose' || Number.isFinite(score)).toBe(true)
      for (const count of Object.values(counts)) expect(count === undefined || (Number.isInteger(count) && count >= 0)).toBe(true)
    }),
    { numRuns: 500 },
  )
})
