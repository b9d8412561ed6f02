import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { composeSequence, type LockoutStep, type SequenceInput, type SequenceSource, type WrittenStep } from '../../src/energy/lockout-sequence.ts'
import { lockoutPhases, writtenPhases } from '../../src/model/lockout-phases.ts'

/** Source: 29 CFR 1910.147(d)(1) to (6), (e)(1) to (3); try-out and controls back to off: Appendix A. */
const plain: SequenceSource = { id: 'supply', points: ['E1'], stored: false, waits: false, reaccumulates: false, voltageTest: false, tryOut: false }
const compose = (input: Partial<SequenceInput<string>>) =>
  composeSequence<string>({ sources: [plain], tagged: new Set(), written: [], tools: false, ...input })
const told = (steps: readonly LockoutStep<string>[]) =>
  steps.map(({ phase, act, text, point, source }) => [phase, text ?? act, point ?? source].filter((it) => it !== undefined).join(' '))

test('one source with nothing stored', () => {
  expect(told(compose({}))).toEqual([
    'prepare know-energies',
    'notify tell-affected',
    'isolate set-safe E1',
    'lock lock E1',
    'lock further-locks',
    'verify clear-people',
    'verify prove supply',
    'work work',
    'release clear-area',
    'release count-people',
    'release remove-locks',
    'release tell-before-start',
    'release set-service E1',
  ])
})

test('a voltage test is framed by the proof of the tester, a try-out ends with the controls at off', () => {
  const verify = told(compose({ sources: [{ ...plain, voltageTest: true, tryOut: true }] })).filter((it) => it.startsWith('verify'))
  expect(verify).toEqual([
    'verify clear-people',
    'verify prove-tester supply',
    'verify prove supply',
    'verify prove-tester-again supply',
    'verify controls-off supply',
  ])
})

test('what is written stands in the place of what would be composed, and the rest keeps its place', () => {
  const written: WrittenStep<string>[] = [
    { phase: 'restore', point: 'E1', text: 'switch on gently' },
    { phase: 'isolate', text: 'look at the lamp' },
    { phase: 'isolate', point: 'E1', text: 'turn the handle' },
    { phase: 'isolate', text: 'see the lamp go out' },
    { phase: 'shut-down', text: 'stop' },
    { phase: 'release', text: 'close the drain' },
  ]
  const steps = told(compose({ sources: [plain, { ...plain, id: 'air', points: ['P1'] }], written }))
  expect(steps.filter((it) => /^(shut-down|isolate|release)/.test(it))).toEqual([
    'shut-down stop',
    'isolate look at the lamp',
    'isolate turn the handle E1',
    'isolate see the lamp go out',
    'isolate set-safe P1',
    'release clear-area',
    'release count-people',
    'release close the drain',
    'release remove-locks',
    'release tell-before-start',
    'release set-service P1',
    'release switch on gently E1',
  ])
})

test('a step for a point or source that the lockout does not touch is kept', () => {
  const written: WrittenStep<string>[] = [
    { phase: 'isolate', point: 'E9', text: 'nine' },
    { phase: 'verify', source: 'gas', text: 'sniff' },
    { phase: 'dissipate', source: 'gas', text: 'purge' },
  ]
  expect(told(compose({ written }))).toEqual(expect.arrayContaining(['isolate nine E9', 'verify sniff gas', 'dissipate purge gas']))
})

test('a tag hangs where no lock does', () => {
  expect(told(compose({ tagged: new Set(['E1']) }))).toContain('lock tag E1')
})

test('after each step it is known what is still live', () => {
  const sources = [plain, { ...plain, id: 'receiver', points: ['P1'], stored: true, waits: true }]
  const steps = compose({ sources }).filter(({ stillEnergised }) => stillEnergised)
  expect(steps.map(({ act, stillEnergised }) => `${act}: ${stillEnergised?.join(' ')}`)).toEqual([
    'set-safe: receiver',
    'set-safe: receiver',
    'lock: receiver',
    'lock: receiver',
    'further-locks: receiver',
    'release-stored: receiver',
    'wait: ',
  ])
})

describe('laws, for any sources and any written steps', () => {
  const pointIds = ['E1', 'E2', 'P1', 'G1']
  const ids = ['supply', 'bus', 'air', 'lift']
  const sources = fc.uniqueArray(
    fc.record({
      id: fc.constantFrom(...ids),
      points: fc.uniqueArray(fc.constantFrom(...pointIds), { minLength: 1, maxLength: 3 }),
      stored: fc.boolean(),
      waits: fc.boolean(),
      reaccumulates: fc.boolean(),
      voltageTest: fc.boolean(),
      tryOut: fc.boolean(),
    }),
    { selector: ({ id }) => id, minLength: 1, maxLength: 4 },
  )
  const step: fc.Arbitrary<WrittenStep<string>> = fc
    .record({
      phase: fc.constantFrom(...writtenPhases),
      point: fc.option(fc.constantFrom(...pointIds), { nil: undefined }),
      source: fc.option(fc.constantFrom(...ids), { nil: undefined }),
      text: fc.string({ minLength: 1, maxLength: 4 }),
    })
    .map(({ phase, point, source, text }) => ({ phase, text, ...(point ? { point } : {}), ...(source ? { source } : {}) }))
  const input = fc.record({ sources, tagged: fc.constant(new Set<string>()), written: fc.array(step, { maxLength: 12 }), tools: fc.boolean() })
  const indexes = (steps: readonly LockoutStep<string>[], test: (step: LockoutStep<string>) => boolean) =>
    steps.flatMap((step, index) => (test(step) ? [index] : []))

  test('the phases keep their order', () => {
    fc.assert(
      fc.property(input, (it) => {
        const order = composeSequence(it).map(({ phase }) => lockoutPhases.indexOf(phase))
        expect(order).toEqual(order.toSorted((a, b) => a - b))
      }),
    )
  })

  test('no point is locked before it is isolated, nothing is released before every lock hangs, nothing is proved before it is released, and the work comes last', () => {
    fc.assert(
      fc.property(input, (it) => {
        const steps = composeSequence(it)
        for (const point of it.sources.flatMap(({ points }) => points)) {
          const isolated = indexes(steps, (step) => step.phase === 'isolate' && step.point === point)
          const locked = indexes(steps, (step) => step.phase === 'lock' && step.point === point)
          expect(isolated.length).toBeGreaterThan(0)
          expect(locked.length).toBeGreaterThan(0)
          expect(Math.max(...isolated)).toBeLessThan(Math.min(...locked))
        }
        const lastLock = Math.max(...indexes(steps, ({ phase }) => phase === 'lock'))
        const work = steps.findIndex(({ phase }) => phase === 'work')
        for (const { id, stored } of it.sources) {
          const released = indexes(steps, (step) => step.phase === 'dissipate' && step.source === id)
          const proved = indexes(steps, (step) => step.phase === 'verify' && step.source === id)
          if (stored) expect(Math.min(...released)).toBeGreaterThan(lastLock)
          expect(proved.length).toBeGreaterThan(0)
          expect(Math.min(...proved)).toBeGreaterThan(Math.max(lastLock, ...released))
          expect(Math.max(...proved)).toBeLessThan(work)
        }
      }),
    )
  })

  test('no written step is lost, and none is doubled', () => {
    fc.assert(
      fc.property(input, (it) => {
        const kept = composeSequence(it).flatMap(({ text }) => text ?? [])
        expect(kept.toSorted()).toEqual(it.written.map(({ text }) => text).toSorted())
      }),
    )
  })

  test('what is still live never grows, and nothing is at the end', () => {
    fc.assert(
      fc.property(input, (it) => {
        const live = composeSequence(it).flatMap(({ stillEnergised }) => (stillEnergised ? [stillEnergised] : []))
        for (const [index, now] of live.entries()) expect(live[index - 1] ?? now).toEqual(expect.arrayContaining([...now]))
        expect(live.at(-1)).toEqual([])
      }),
    )
  })
})
