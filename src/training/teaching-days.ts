import { addMonths, isDay } from './months.ts'

/** Monday to Sunday, as ISO 8601 counts them. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7

/**
 * The first `count` days from a day on, itself included, that fall on one of the weekdays; none where no weekday is given.
 * RangeError for a text that is no day.
 */
export function teachingDays(first: string, weekdays: ReadonlySet<Weekday>, count: number): string[] {
  if (!isDay(first)) throw new RangeError(`no day: ${first}`)
  const days: string[] = []
  for (let day = first; weekdays.size > 0 && days.length < count; day = dayAfter(day)) if (weekdays.has(weekdayOf(day))) days.push(day)
  return days
}

const weekdays = [4, 5, 6, 7, 1, 2, 3] as const

/** The first day of 1970 was a Thursday. */
function weekdayOf(day: string): Weekday {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const since = Date.UTC(year, month - 1, date) / 86_400_000
  return weekdays[((since % 7) + 7) % 7] ?? 4
}

function dayAfter(day: string): string {
  const month = day.slice(0, 8)
  const next = `${month}${String(Number(day.slice(8)) + 1).padStart(2, '0')}`
  return isDay(next) ? next : addMonths(`${month}01`, 1)
}
