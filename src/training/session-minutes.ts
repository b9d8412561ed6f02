/** What bounds a session. Whole minutes above 0. */
export interface SessionLimits {
  /** A session takes no more, its breaks counted. */
  minutes: number
  /** A break is taken whenever so much was taught and something is still to be taught; without it there are none. */
  breakAfterMinutes?: number | undefined
  /** How long a break takes; without it there are none. */
  breakMinutes?: number | undefined
  /** All sessions of a day together take no more. A session takes no more than a day. */
  dayMinutes?: number | undefined
}

/** How long it takes to teach so many minutes, with the breaks in between. */
export function minutesWithBreaks(taughtMinutes: number, { breakMinutes = 0, breakAfterMinutes = Number.POSITIVE_INFINITY }: SessionLimits): number {
  return taughtMinutes + breakMinutes * Math.max(0, Math.ceil(taughtMinutes / breakAfterMinutes) - 1)
}

/** Minutes of teaching that a session takes at most. */
export function limitOf(limits: SessionLimits): number {
  const { minutes, breakMinutes = 0, breakAfterMinutes, dayMinutes = minutes } = limits
  const whole = Math.min(minutes, dayMinutes)
  if (breakMinutes === 0 || breakAfterMinutes === undefined) return whole
  const rounds = Math.floor(whole / (breakAfterMinutes + breakMinutes))
  return rounds * breakAfterMinutes + Math.min(whole - rounds * (breakAfterMinutes + breakMinutes), breakAfterMinutes)
}
