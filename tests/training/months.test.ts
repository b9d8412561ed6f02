import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addMonths, isDay } from '../../src/training/months.ts'

// Computed by hand: the day stays, or is the last of a shorter month.
test.each([
  ['2024-01-31', 1, '2024-02-29'],
  ['2024-02-29', 12, '2025-02-28'],
  ['2025-08-31', 6, '2026-02-28'],
  ['2025-11-30', 3, '2026-02-28'],
  ['2026-03-31', -1, '2026-02-28'],
  ['2025-12-31', 1, '2026-01-31'],
  ['2026-01-15', -1, '2025-12-15'],
  ['1999-02-28', 12, '2000-02-28'],
])('%s and %d months is %s', (day, months, expected) => expect(addMonths(day, months)).toBe(expected))

test.each(['2025-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2026-1-1', '26-01-01', '2026-01-01T00:00', '', '0000-01-01'])(
  '%s is no day',
  (text) => {
    expect(isDay(text)).toBe(false)
    expect(() => addMonths(text, 1)).toThrow(RangeError)
  },
)

test('outside the years that can be written there is no day', () => {
  expect(() => addMonths('9999-12-31', 1)).toThrow(RangeError)
  expect(() => addMonths('0001-01-01', -1)).toThrow(RangeError)
  expect(() => addMonths('2026-01-01', 1.5)).toThrow(RangeError)
})

describe('laws', () => {
  const day = fc.date({ min: new Date('1000-01-01'), max: new Date('2999-12-31'), noInvalidDate: true }).map((it) => it.toISOString().slice(0, 10))
  const months = fc.integer({ min: -1200, max: 1200 })

  test('a day is later after more months, and never in another month', () => {
    fc.assert(
      fc.property(day, months, (from, count) => {
        const to = addMonths(from, count)
        expect(isDay(to)).toBe(true)
        expect(addMonths(from, count + 1) > to).toBe(true)
        const monthsOf = (it: string) => Number(it.slice(0, 4)) * 12 + Number(it.slice(5, 7))
        expect(monthsOf(to) - monthsOf(from)).toBe(count)
      }),
    )
  })

  test('an earlier day does not end later', () => {
    fc.assert(
      fc.property(day, day, months, (one, other, count) => {
        const [early, late] = one < other ? [one, other] : [other, one]
        expect(addMonths(early, count) <= addMonths(late, count)).toBe(true)
      }),
    )
  })

  test('there and back is the same day, or the last of a shorter month on the way', () => {
    fc.assert(
      fc.property(day, months, (from, count) => {
        const back = addMonths(addMonths(from, count), -count)
        expect(back === from || Number(from.slice(8)) > 28).toBe(true)
      }),
    )
  })
})
