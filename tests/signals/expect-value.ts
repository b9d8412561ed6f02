import { expect } from 'vitest'
import { isComputed, type Result } from '../../src/law/law.ts'

/** Holds a computed value against a published one, within an absolute tolerance. */
export function expectValue(result: Result, expected: number, tolerance: number): void {
  const value = valueIn(result)
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(tolerance)
}

/** The value of a result that must have one. */
export function valueIn(result: Result): number {
  if (!isComputed(result)) throw new Error(JSON.stringify(result))
  return result.value
}
