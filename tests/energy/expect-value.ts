import { expect } from 'vitest'
import type { Result } from '../../src/energy/law.ts'

/** Holds a computed value against a published one, within an absolute tolerance. */
export function expectValue(result: Result, expected: number, tolerance: number): void {
  const value = 'value' in result ? result.value : JSON.stringify(result)
  expect(value).toBeTypeOf('number')
  expect(Math.abs(Number(value) - expected), `${value} against ${expected}`).toBeLessThanOrEqual(tolerance)
}
