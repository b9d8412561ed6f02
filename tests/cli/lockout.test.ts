import { expect, test } from 'vitest'
import { lockoutPhases } from '../../src/model/lockout-phases.ts'
import { runFettle } from './run-fettle.ts'

/** Phases of the contract, and no others. */
interface Printed {
  id: string
  points: { point: string; tag: string }[]
  steps: { phase: (typeof lockoutPhases)[number]; text: string; point?: string; source?: string; stillEnergised?: string[] }[]
  waits: { source: string; seconds: number }[]
}

const lockout = (...args: string[]) => runFettle(['lockout', 'example-machine', ...args])

test('the sequence as JSON: every phase in order, every point isolated and locked, every stored source released and proved', async () => {
  const { code, stdout } = await lockout('lo-1', '--format', 'json')
  expect(code).toBe(0)
  const { id, points, steps, waits }: Printed = JSON.parse(stdout)
  expect(id).toBe('lo-1')
  expect([...new Set(steps.map(({ phase }) => phase))]).toEqual(lockoutPhases)
  expect(points.map(({ point }) => point)).toEqual(['E1', 'G1', 'P1', 'P2', 'W1', 'T1', 'T2', 'C1'])
  for (const phase of ['isolate', 'lock'])
    expect(steps.filter((step) => step.phase === phase).flatMap(({ point }) => point ?? [])).toEqual(points.map(({ point }) => point))
  expect(waits.map(({ source, seconds }) => [source, seconds])).toEqual([
    ['dc-bus', 300],
    ['compressed-air', 90],
    ['lift-air', 5],
    ['fan-coasting', 75],
  ])
  expect(steps.findLast(({ stillEnergised }) => stillEnergised)?.stillEnergised).toEqual([])
  expect(steps.every(({ text }) => text.length > 10 && !/[<>{}]|undefined/.test(text))).toBe(true)
})

test('the same as text, by number and in another language', async () => {
  const { code, stdout } = await lockout('LO-2', '--language', 'es')
  expect(code).toBe(0)
  expect(stdout).toMatch(/^LO-2 {2}Elevador\n/)
  expect(stdout).toContain('Ponga DISC202 en OFF')
  expect(stdout).toContain('Ponga HV223, punto P2, en CERRADA')
})

test.each([
  ['en', 'Mains water can build up. A shut valve can leak. HV923 stays open until the work is done.'],
  ['es', 'Agua de red puede volver a acumularse. Una válvula cerrada puede perder.'],
])('the step of watching says in %s what its author wrote', async (language, words) => {
  const { stdout } = await lockout('LO-4', '--language', language)
  expect(stdout).toContain(words)
})

test.each([
  [['lo-9'], /no lockout `lo-9`.*lo-1/],
  [['lo-1', '--language', 'de'], /not in the language `de`/],
  [[], /is missing/],
])('%j cannot run', async (args, message) => {
  const { code, stderr } = await lockout(...args)
  expect(code).toBe(2)
  expect(stderr).toMatch(message)
})
