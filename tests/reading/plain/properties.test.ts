import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { BlockKind } from '../../../src/reading/block.ts'
import type { PlainFinding } from '../../../src/reading/plain/finding.ts'
import { findingsOf, inShort } from './read.ts'

const kinds = fc.constantFrom<BlockKind>('paragraph', 'lead-in', 'item', 'step', 'note', 'message', 'cell')
const languages = fc.constantFrom('en', 'es', 'es-MX', 'de', 'fr', 'it', 'pt', 'zz', '')
const words = fc.constantFrom(
  ...`Open the the valve V12 and drain it , ; . : when If is closed by been must not unless never don't 5mm 6 Kg 1,5 40 degrees C psi (6 bar) pump oil filter
  housing cover prior to in order to utilise "JOG MODE" \uFFFC \u00A0 — - ( ) ' ’ “ ” to VFD abra la válvula cuando el motor pare y cierre`.split(
    / +|\n/,
  ),
)
const texts = fc.oneof(
  fc.array(words, { maxLength: 40 }).map((parts) => parts.join(' ')),
  fc.string({ unit: 'binary', maxLength: 60 }),
)

function withSuggestions(text: string, findings: readonly PlainFinding[]): string {
  return findings
    .toReversed()
    .reduce((now, { start, end, suggestion }) => (suggestion === undefined ? now : now.slice(0, start) + suggestion + now.slice(end)), text)
}

describe('findings', () => {
  test('stand in their text, in order, whatever the text', () => {
    fc.assert(
      fc.property(kinds, texts, languages, (kind, text, language) => {
        const found = findingsOf(kind, text, language)
        for (const { start, end, words } of found) {
          expect(start).toBeLessThan(end)
          expect(words).toBe(text.slice(start, end))
        }
        expect(found.map(({ start }) => start)).toEqual(found.map(({ start }) => start).sort((a, b) => a - b))
      }),
      { numRuns: 400 },
    )
  })

  test.each([
    ['en', 'Utilise the the crank prior to 5mm of play, and don’t use 12 Kg at 40 degrees C.'],
    ['en', 'When the motor stops open the guard.'],
    ['de', 'Der der der Spalt ist 1.5 mm mit mit 45 Nm.'],
    ['es', 'Abra la la válvula de 24V y 5 seg.'],
  ])('are gone when their suggestions are taken: %s', (language, text) => {
    const suggested = findingsOf('step', text, language).filter(({ suggestion }) => suggestion !== undefined)
    expect(suggested.length).toBeGreaterThan(0)
    const left = findingsOf('step', withSuggestions(text, suggested), language).filter(({ suggestion }) => suggestion !== undefined)
    expect(inShort(left)).toEqual([])
  })

  test.each([
    ["Don't use 24V when it's on.", 'Don’t use 24V when it’s on.'],
    ['Close it and open valve V13 at 5 bar.', 'Close it and open valve V13 at 5\u00A0bar.'],
    ['Utilise the crank in order to turn it.', 'Utilise the crank in\u00A0order to turn it.'],
    ['The conveyor belt drive motor is hot.', 'The con\u00ADveyor belt drive motor is hot.'],
  ])('are the same for other quotes, spaces and hyphens: %s', (plain, typeset) => {
    const kindsIn = (text: string) => findingsOf('step', text).map(({ kind, suggestion }) => [kind, suggestion])
    expect(kindsIn(plain).length).toBeGreaterThan(0)
    expect(kindsIn(typeset)).toEqual(kindsIn(plain))
  })

  test.each(['WHEN YOU REMOVE THE COVER, LIFT IT.', 'DO NOT OPEN THE GUARD WHEN THE BELT MOVES.', 'MAKE SURE THAT THE DOOR IS SHUT.'])(
    'are the same in capitals: %s',
    (text) => {
      expect(findingsOf('step', text)).toEqual([])
      expect(findingsOf('step', text.toLowerCase())).toEqual([])
    },
  )
})
