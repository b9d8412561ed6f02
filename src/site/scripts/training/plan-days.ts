import type { Session } from '../../../training/sessions.ts'
import { teachingDays, type Weekday } from '../../../training/teaching-days.ts'

/** The day of each session: each has a day of its own, or a day has as many as it takes. None without a first day. */
export function daysOf(sessions: readonly Session[], first: string, weekdays: readonly Weekday[]): string[] {
  if (first === '') return []
  const numbers = sessions.map(({ day }, index) => day ?? index + 1)
  const days = teachingDays(first, new Set(weekdays), Math.max(0, ...numbers))
  return numbers.flatMap((number) => days[number - 1] ?? [])
}
