import { describe, expect, test } from 'vitest'
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
