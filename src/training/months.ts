/** Whether a text is a day that exists, written `YYYY-MM-DD`, in the years 0001 to 9999. */
export function isDay(text: string): boolean {
  const parts = partsOf(text)
  return (
    parts !== undefined && parts.year >= 1 && parts.month >= 1 && parts.month <= 12 && parts.day >= 1 && parts.day <= daysIn(parts.year, parts.month)
  )
}

/**
 * The same day `months` later, or earlier where negative; the last day of the month where that is shorter:
 * 2024-02-29 and 12 months is 2025-02-28. RangeError for a text that is no day, and outside the years 0001 to 9999.
 */
export function addMonths(day: string, months: number): string {
  const parts = isDay(day) ? partsOf(day) : undefined
  if (!parts || !Number.isInteger(months)) throw new RangeError(`no day: ${day} and ${months} months`)
  const count = parts.year * 12 + (parts.month - 1) + months
  const [year, month] = [Math.floor(count / 12), (((count % 12) + 12) % 12) + 1]
  if (year < 1 || year > 9999) throw new RangeError(`the year ${year} is outside 0001 to 9999`)
  return [digits(year, 4), digits(month, 2), digits(Math.min(parts.day, daysIn(year, month)), 2)].join('-')
}

function partsOf(text: string): { year: number; month: number; day: number } | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []
  return year === undefined ? undefined : { year: Number(year), month: Number(month), day: Number(day) }
}

function daysIn(year: number, month: number): number {
  if (month !== 2) return [4, 6, 9, 11].includes(month) ? 30 : 31
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28
}

const digits = (value: number, count: number) => String(value).padStart(count, '0')
