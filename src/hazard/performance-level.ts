import type { SignalWord } from './signal-word.ts'

export type PerformanceLevel = 'a' | 'b' | 'c' | 'd' | 'e'

/** S1 slight, S2 serious injury; F1 seldom, F2 frequent exposure; P1 avoidable, P2 scarcely. */
export interface RiskParameters {
  s: 1 | 2
  f: 1 | 2
  p: 1 | 2
}

/** The required performance level of a safety function. Source: ISO 13849-1, annex A, figure A.1. */
export function requiredPerformanceLevel({ s, f, p }: RiskParameters): PerformanceLevel {
  const level = (s - 1) * 2 + (f - 1) + (p - 1)
  return (['a', 'b', 'c', 'd', 'e'] as const)[level] ?? 'e'
}

/** What a required performance level leaves open: `severity` where it occurs for S1 and for S2. */
export type WordOfLevel = { most: Exclude<SignalWord, 'notice'> } | { ask: 'severity' }

/**
 * What a required performance level says about the signal word: at most a bound, and for `c` nothing. A level never
 * decides the word, since it rates the machine without the safety function; the word rates the harm that is left.
 */
export function wordBoundOf(level: PerformanceLevel): WordOfLevel {
  if (level === 'c') return { ask: 'severity' }
  return { most: level === 'a' || level === 'b' ? 'caution' : 'danger' }
}
