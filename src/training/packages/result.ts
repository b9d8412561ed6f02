/** What a learner did with a lesson, as its page tells it. */
export interface LessonResult {
  /** Everything in the lesson was seen or answered. */
  completed: boolean
  /** By the lesson's own pass mark; left out where it asks nothing. */
  passed?: boolean
  /** Questions answered right, and questions asked; `of` is at least 1. */
  score?: { right: number; of: number }
  /** Time spent, in seconds. */
  durationS: number
}

/**
 * The share of right answers as 0 to 1 with four decimals, rounded down: rounding never lifts a result over a pass mark.
 */
export function scaledScore({ right, of }: { right: number; of: number }): number {
  return Math.floor((10_000 * right) / of) / 10_000
}

/** The same as 0 to 100 with two decimals. */
export function rawScore({ right, of }: { right: number; of: number }): number {
  return Math.floor((10_000 * right) / of) / 100
}

/** A time in seconds as ISO 8601 writes it: `PT90S`; at most two decimals, as xAPI 1.0.3 and SCORM 2004 allow. */
export function isoDuration(seconds: number): string {
  return `PT${Math.max(0, Math.round(seconds * 100) / 100)}S`
}

/** A time in seconds as SCORM 1.2 writes it: `0000:01:30`; four digits hold 9999 hours. */
export function clockDuration(seconds: number): string {
  const whole = Math.min(Math.max(0, Math.round(seconds)), 9999 * 3600 + 3599)
  const digits = (value: number, width: number) => String(Math.floor(value)).padStart(width, '0')
  return `${digits(whole / 3600, 4)}:${digits((whole % 3600) / 60, 2)}:${digits(whole % 60, 2)}`
}
