import fc from 'fast-check'
import { expect, test } from 'vitest'
import { assignCheapest } from '../../../src/site/plan/assign-cheapest.ts'

const costsOf = (costs: readonly (readonly number[])[], columns: readonly number[]) =>
  columns.reduce((sum, column, row) => sum + (costs[row]?.[column] ?? Number.NaN), 0)

/** The least sum, by trying every choice. */
function leastOf(costs: readonly (readonly number[])[], taken: readonly number[] = []): number {
  const row = costs[taken.length]
  if (!row) return costsOf(costs, taken)
  return Math.min(...row.flatMap((_, column) => (taken.includes(column) ? [] : [leastOf(costs, [...taken, column])])))
}

test('each row gets a column of its own, and no other choice costs less', () => {
  const table = fc
    .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 }))
    .chain(([rows, more]) =>
      fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: rows + more, maxLength: rows + more }), { minLength: rows, maxLength: rows }),
    )
  fc.assert(
    fc.property(table, (costs) => {
      const columns = assignCheapest(costs)
      expect(new Set(columns).size).toBe(costs.length)
      expect(costsOf(costs, columns)).toBe(leastOf(costs))
    }),
  )
})

test('nothing is asked for, and too few columns are said', () => {
  expect(assignCheapest([])).toEqual([])
  expect(() => assignCheapest([[1], [2]])).toThrow(RangeError)
})
