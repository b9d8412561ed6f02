import type { Refused } from './refusals.ts'
import type { Verdict } from './verdict.ts'
import { atMost } from './verdict.ts'

export type CodingLevel = 'low' | 'medium' | 'high'

/** How hard an actuator of an interlock is to imitate, by the number of codes; undefined for no whole number. Source: ISO 14119. */
export function codingLevel(codes: number): CodingLevel | undefined {
  if (!Number.isInteger(codes) || codes < 1) return undefined
  return codes < 10 ? 'low' : codes <= 1000 ? 'medium' : 'high'
}

/** Whether two channels changed within the time that their device is set to, all in ms. */
export function discrepancy(firstMs: number, secondMs: number, limitMs: number): 'in time' | 'discrepancy fault' | undefined {
  if (![firstMs, secondMs, limitMs].every(Number.isFinite)) return undefined
  return atMost(Math.abs(secondMs - firstMs), limitMs) ? 'in time' : 'discrepancy fault'
}

/** What a reading on a safety device says: that a signal arrives, or does not. Whether the device is in order it never says. */
export function safetySignal(signal: Verdict): { signal: Verdict; approval: Refused } {
  return { signal, approval: { refused: 'safety-approval' } }
}
