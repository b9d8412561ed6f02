import { expect, test } from 'vitest'
import { requiredPerformanceLevel, wordBoundOf } from '../../src/hazard/performance-level.ts'

// Source: ISO 13849-1, annex A, figure A.1.
test.each([
  [1, 1, 1, 'a'],
  [1, 1, 2, 'b'],
  [1, 2, 1, 'b'],
  [1, 2, 2, 'c'],
  [2, 1, 1, 'c'],
  [2, 1, 2, 'd'],
  [2, 2, 1, 'd'],
  [2, 2, 2, 'e'],
] as const)('H09: S%d F%d P%d: %s', (s, f, p, level) => expect(requiredPerformanceLevel({ s, f, p })).toBe(level))

test('H10: a level decides no word: c occurs for both severities and asks which', () => {
  expect(wordBoundOf('c')).toEqual({ ask: 'severity' })
  expect((['a', 'b', 'd', 'e'] as const).map(wordBoundOf)).toEqual([{ most: 'caution' }, { most: 'caution' }, { most: 'danger' }, { most: 'danger' }])
})
