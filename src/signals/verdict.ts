/** `no verdict`: between two limits, where a good device may read either. */
export type Verdict = 'pass' | 'fail' | 'no verdict'

/** Ends inclusive; an end that is absent is open. */
export interface Band {
  low?: number
  high?: number
}

/** Two sides of a limit that differ only by the rounding of the computer are equal: a value on a limit passes. */
const slack = (a: number, b: number) => 1e-9 * Math.max(Math.abs(a), Math.abs(b))

export const atMost = (value: number, limit: number): boolean => value <= limit + slack(value, limit)
export const atLeast = (value: number, limit: number): boolean => value >= limit - slack(value, limit)

/** False for what is no finite number. */
export function within(value: number, { low, high }: Band): boolean {
  if (!Number.isFinite(value)) return false
  return (low === undefined || atLeast(value, low)) && (high === undefined || atMost(value, high))
}

/**
 * A value against a band that must hold it. A value that is no finite number has no verdict.
 */
export function judge(value: number, band: Band): Verdict {
  if (!Number.isFinite(value)) return 'no verdict'
  return within(value, band) ? 'pass' : 'fail'
}
