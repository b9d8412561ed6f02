import { describe, expect, test } from 'vitest'
import { levelReader } from '../../src/model/page-level.ts'
import { readBlocks } from '../../src/model/prose/read-text.ts'
import { readingLimit } from '../../src/model/reading-limit.ts'

const place = () => ({ file: 'a.mdx', line: 1, column: 1, endLine: 1, endColumn: 1 })
const prose = (text: string, language: string) => readBlocks([{ kind: 'paragraph', text, place }], language)
const times = (count: number, sentence: string) => Array.from({ length: count }, () => sentence).join(' ')

describe('the limit of a reader', () => {
  test.each([
    ['operator', 'en', { measure: 'fleschKincaidGrade', value: 8 }],
    ['maintenance', 'en', { measure: 'fleschKincaidGrade', value: 9 }],
    ['engineer', 'en', { measure: 'fleschKincaidGrade', value: 12 }],
    ['operator', 'es', { measure: 'szigrisztPazos', value: 65 }],
    ['operator', 'de', undefined],
  ] as const)('%s in %s', (reader, language, limit) => {
    const found = readingLimit({ file: {} }, reader, language)
    if (limit === undefined) expect(found).toBeUndefined()
    else expect(found).toMatchObject(limit)
  })

  test('is that of machine.yaml where it names one', () => {
    const file = { readers: { operator: { grade: 6, ease: 70 } } }
    expect([readingLimit({ file }, 'operator', 'en')?.value, readingLimit({ file }, 'operator', 'es')?.value]).toEqual([6, 70])
    expect(readingLimit({ file }, 'engineer', 'en')?.value).toBe(12)
  })
})

describe('the level of a text', () => {
  const hard = times(20, 'Parameterization requires consideration of the natural frequency.')

  test('is held against the limit from 150 words on, and not before', () => {
    const level = (count: number) =>
      levelReader({ file: {} })(prose(times(count, 'Parameterization requires consideration of the natural frequency.'), 'en'), 'operator')
    expect([level(21).counts.words, level(21).tooHard]).toEqual([147, false])
    expect([level(22).counts.words, level(22).tooHard]).toEqual([154, true])
  })

  test('falls with a word that machine.yaml counts in another way, in any case', () => {
    const [plain, own] = [{}, { ownWords: { en: { Parameterization: 2 } } }].map((file) => levelReader({ file })(prose(hard, 'en'), 'operator'))
    expect(Number(plain?.counts.syllables) - Number(own?.counts.syllables)).toBe(20 * 5)
    expect(Number(own?.level?.value)).toBeLessThan(Number(plain?.level?.value))
  })

  test('of Spanish is too hard where its ease is below the limit', () => {
    const spanish = times(20, 'La parametrización requiere la consideración de la frecuencia característica.')
    expect(levelReader({ file: {} })(prose(spanish, 'es'), 'operator')).toMatchObject({ tooHard: true, limit: { value: 65 } })
  })

  test('is none where nothing is written', () => {
    expect(levelReader({ file: {} })(prose('', 'en'), 'operator')).toMatchObject({ level: undefined, tooHard: false, counts: { words: 0 } })
  })
})
