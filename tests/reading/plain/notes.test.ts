import { describe, expect, test } from 'vitest'
import type { Block } from '../../../src/reading/block.ts'
import { noResult } from '../../../src/reading/plain/no-result.ts'
import { sentencesOf } from '../../../src/reading/sentences.ts'
import { findingsOf, inShort } from './read.ts'

// Source: ASD-STE100 Issue 9, rule 5.5.
describe('a note', () => {
  test.each([
    ['NOTE: Open valve V12.', ['command-in-note: Open valve V12']],
    ['The valve is stiff. Use both hands.', ['command-in-note: Use both hands']],
    ['Nota: abra la válvula V12.', []],
    ['See the table.', []],
    ['Refer to drawing E-101.', []],
    ['The valve opens by itself.', []],
    ['If the lamp is red, the pump has stopped.', []],
    ['Drain valves are on the left.', []],
  ])('%s', (text, found) => {
    expect(inShort(findingsOf('note', text))).toEqual(found)
  })

  test('in Spanish', () => {
    expect(inShort(findingsOf('note', 'Nota: abra la válvula V12.', 'es'))).toEqual(['command-in-note: abra la válvula V12'])
    expect(inShort(findingsOf('note', 'Vea la tabla.', 'es'))).toEqual([])
  })
})

// Source: ASD-STE100 Issue 9, rules 7.1 to 7.3.
describe('a safety message without a result', () => {
  const judge = (kind: Block['kind'], text: string, language = 'en') => {
    const block: Block = { kind, text }
    return noResult(sentencesOf(block, language), block, language)?.words
  }

  test.each([
    ['WARNING: Do not touch the plate.', 'Do not touch the plate.'],
    ['Wear gloves. Do not touch the plate.', 'Wear gloves. Do not touch the plate.'],
    ['Do not touch the plate. It is hot and can burn you.', undefined],
    ['The plate is hot.', undefined],
  ])('%s', (text, words) => {
    expect(judge('message', text)).toBe(words)
  })

  test('is looked for in safety messages', () => {
    expect(judge('paragraph', 'Do not touch the plate.')).toBeUndefined()
    expect(judge('message', 'No toque la placa.', 'es')).toBe('No toque la placa.')
    expect(judge('message', 'Fassen Sie die Platte nicht an.', 'de')).toBeUndefined()
  })
})
