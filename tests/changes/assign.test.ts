import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assign } from '../../src/changes/assign.ts'

const most = 100

/** The least cost, by the gains that are left of a high number. */
function leastCost(costs: readonly (readonly number[])[]): { columns: (number | undefined)[]; cost: number } {
  const columns = assign(costs.map((row) => row.map((cost) => most - cost)))
  return { columns, cost: columns.reduce<number>((sum, column, row) => sum + (column === undefined ? 0 : (costs[row]?.[column] ?? 0)), 0) }
}

describe('an assignment', () => {
  // H. A. Taha, Operations Research: An Introduction, section on the assignment model, examples 5.4-1 and 5.4-2; figures from memory.
  test.each([
    {
      costs: [
        [15, 10, 9],
        [9, 15, 10],
        [10, 12, 8],
      ],
      columns: [1, 0, 2],
      cost: 27,
    },
    {
      costs: [
        [1, 4, 6, 3],
        [9, 7, 10, 9],
        [4, 5, 11, 7],
        [8, 7, 8, 5],
      ],
      columns: [0, 2, 1, 3],
      cost: 21,
    },
  ])('of the textbook costs $cost', ({ costs, columns, cost }) => expect(leastCost(costs)).toEqual({ columns, cost }))

  test('of nothing is nothing', () => expect(assign([])).toEqual([]))
  test('leaves rows out where there are too few columns', () => expect(assign([[1], [3], [2]])).toEqual([undefined, 0, undefined]))

  test('has the sum that trying every order finds', () => {
    const grid = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 })).chain(([rows, columns]) => {
      const row = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: columns, maxLength: columns })
      return fc.array(row, { minLength: rows, maxLength: rows })
    })
    fc.assert(
      fc.property(grid, (gains) => {
        const chosen = assign(gains).filter((column) => column !== undefined)
        expect(new Set(chosen).size).toBe(Math.min(gains.length, gains[0]?.length ?? 0))
        const sum = assign(gains).reduce<number>((total, column, row) => total + (column === undefined ? 0 : (gains[row]?.[column] ?? 0)), 0)
        expect(sum).toBe(bestOf(gains, 0, new Set()))
      }),
    )
  })
})

function bestOf(gains: readonly (readonly number[])[], row: number, taken: ReadonlySet<number>): number {
  const own = gains[row]
  if (!own) return 0
  const without = gains.length > own.length ? [bestOf(gains, row + 1, taken)] : []
  return Math.max(
    0,
    ...without,
    ...own.flatMap((gain, column) => (taken.has(column) ? [] : [gain + bestOf(gains, row + 1, new Set([...taken, column]))])),
  )
}
