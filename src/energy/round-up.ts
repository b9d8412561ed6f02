/**
 * A computed waiting time as a reader is told it, in seconds: up to the next full second as far as a minute, above that
 * up to the next full minute. Never down.
 */
export function roundedUpS(exactS: number): number {
  return exactS <= 60 ? Math.ceil(exactS) : Math.ceil(exactS / 60) * 60
}
