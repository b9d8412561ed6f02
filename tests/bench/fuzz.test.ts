import { expect, test } from 'vitest'
import { makeInput, readSeeds } from './fuzz/inputs.ts'
import { tryInput } from './fuzz/try-input.ts'

test('500 mangled inputs: no crash, no finding without a place in its file', () => {
  const seeds = readSeeds()
  // From 1: every fiftieth is the whole example, and is left to the bench.
  const outcomes = Array.from({ length: 520 }, (_, index) => index)
    .filter((index) => index % 50 !== 0)
    .slice(0, 500)
    .map((index) => tryInput(makeInput(index, 3, seeds)))
  expect(outcomes.filter(({ faults }) => faults.length > 0)).toEqual([])
  const untouched = tryInput({ index: 0, what: 'untouched', files: seeds.sound }).findings
  expect(outcomes.filter(({ findings }) => findings !== untouched).length).toBeGreaterThan(350)
}, 60_000)
