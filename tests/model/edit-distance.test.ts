import fc from 'fast-check'
import { expect, test } from 'vitest'
import { editDistance } from '../../src/model/edit-distance.ts'

test.each([
  ['PS-101', 'PS-101', 0],
  ['PS-101', 'PS-110', 1],
  ['PS-101', 'PS-10', 1],
  ['PS-101', 'PS-1011', 1],
  ['PS-101', 'TS-102', 2],
  ['', 'PS', 2],
  ['AB', 'CDE', 3],
  ['ABCDEF', 'GHIJKL', 4],
])('%s to %s, at most 3', (a, b, expected) => expect(editDistance(a, b, 3)).toBe(expected))

const short = fc.stringMatching(/^[ab1]{0,6}$/)
/** The definition, without a limit and without a table. */
const byDefinition = (a: string, b: string): number => {
  if (a === '' || b === '') return a.length + b.length
  const [restA, restB] = [a.slice(1), b.slice(1)]
  const edits = [byDefinition(restA, restB) + (a[0] === b[0] ? 0 : 1), byDefinition(restA, b) + 1, byDefinition(a, restB) + 1]
  if (a.length > 1 && b.length > 1 && a[0] === b[1] && a[1] === b[0]) edits.push(byDefinition(a.slice(2), b.slice(2)) + 1)
  return Math.min(...edits)
}

test('agrees with its definition, up to the limit', () => {
  fc.assert(fc.property(short, short, fc.nat(4), (a, b, limit) => editDistance(a, b, limit) === Math.min(byDefinition(a, b), limit + 1)))
})

test.each([
  ['lift', 'lift', 0],
  ['lift', 'left', 1],
  ['lfit', 'lift', 1],
  ['presure', 'pressure', 1],
  ['temprature', 'temperature', 1],
  ['valv', 'valves', 2],
  ['lift', 'conveyor', 3],
])('%s and %s are %i edits apart, more than two count as three', (from, to, edits) => {
  expect(editDistance(from, to, 2)).toBe(edits)
})

test('the distance is the same from both sides and never more than the longer word', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 8 })
  fc.assert(
    fc.property(word, word, (a, b) => {
      const edits = editDistance(a, b, 20)
      expect(edits).toBe(editDistance(b, a, 20))
      expect(edits).toBeLessThanOrEqual(Math.max(a.length, b.length))
      expect(edits === 0).toBe(a === b)
    }),
  )
})
