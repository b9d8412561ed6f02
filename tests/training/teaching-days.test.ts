import { expect, test } from 'vitest'
import { teachingDays, type Weekday } from '../../src/training/teaching-days.ts'

const working: Weekday[] = [1, 2, 3, 4, 5]

/** Calendars: 2026-11-26 is a Thursday, 2024-02-29 one as well, 2000-01-01 a Saturday. */
test.each([
  ['2026-11-26', working, 4, ['2026-11-26', '2026-11-27', '2026-11-30', '2026-12-01']],
  ['2026-12-30', working, 3, ['2026-12-30', '2026-12-31', '2027-01-01']],
  ['2024-02-28', working, 3, ['2024-02-28', '2024-02-29', '2024-03-01']],
  ['2023-02-28', [3], 2, ['2023-03-01', '2023-03-08']],
  ['2000-01-01', [6], 2, ['2000-01-01', '2000-01-08']],
  ['1969-12-30', [2, 3], 3, ['1969-12-30', '1969-12-31', '1970-01-06']],
  ['2026-11-26', [], 3, []],
  ['2026-11-26', working, 0, []],
] as [string, Weekday[], number, string[]][])('from %s on weekdays %j, %i of them', (first, weekdays, count, expected) => {
  expect(teachingDays(first, new Set(weekdays), count)).toEqual(expected)
})

test('what is no day is refused', () => {
  expect(() => teachingDays('2026-02-30', new Set(working), 1)).toThrow('no day: 2026-02-30')
})
