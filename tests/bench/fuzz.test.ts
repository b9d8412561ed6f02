import { expect, test } from 'vitest'
import { makeInput } from './fuzz/inputs.ts'
import { readSeeds } from './fuzz/seeds.ts'
import { inputTrier } from './fuzz/try-input.ts'

const seeds = readSeeds()
const tryInput = inputTrier()

test('500 mangled inputs: no crash, no finding without a place in its file', async () => {
  // From 1: every fiftieth is the whole example, and is left to the bench.
  const outcomes = []
  for (let index = 1; outcomes.length < 500; index++) if (index % 50 !== 0) outcomes.push(await tryInput(makeInput(index, 3, seeds)))
  expect(outcomes.filter(({ faults }) => faults.length > 0)).toEqual([])
  expect(outcomes.filter(({ findings }) => findings > 0).length).toBeGreaterThan(350)
}, 300_000)

test.each(Object.entries(seeds))('untouched, the machine %s of the inputs has no finding', async (what, files) => {
  expect((await tryInput({ index: 0, what, files })).findings).toBe(0)
})
