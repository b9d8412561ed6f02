import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inputLimits } from '../../src/signals/digital-input.ts'
import type { ContactSense, SwitchedCircuit } from '../../src/signals/fault/circuit.ts'
import { diagnose, type Observation } from '../../src/signals/fault/diagnose.ts'
import { faultTable } from '../../src/signals/fault/fault-table.ts'
import type { FaultId, Indicator, Light, Point } from '../../src/signals/fault/row.ts'
import { namurLimits } from '../../src/signals/namur.ts'
import { outputLimits } from '../../src/signals/sensor-output.ts'
import { languagesWithSignalWords, signalWords } from '../../src/signals/words/words.ts'
import { type Parts, simulate } from './simulated-circuit.ts'

const limits = inputLimits['Type 1']

function circuitOf(output: 'pnp' | 'npn' | '2-wire' | 'dry contact', card: 'sinking' | 'sourcing', contact: ContactSense = 'NO'): SwitchedCircuit {
  return { output, card, contact, supplyV: 24, lowestSupplyV: 20.4, dropV: outputLimits[output].dropV, limits }
}
const pnp = circuitOf('pnp', 'sinking')
const npn = circuitOf('npn', 'sourcing')

function found(observations: readonly Observation[], circuit: SwitchedCircuit) {
  const findings = diagnose(observations, circuit)
  if ('refused' in findings) throw new Error(findings.refused)
  return findings
}
const ids = (observations: readonly Observation[], circuit: SwitchedCircuit): FaultId[] =>
  found(observations, circuit).diagnoses.map(({ row }) => row.id)

const circuits = (
  [
    ['pnp', 'sinking'],
    ['npn', 'sourcing'],
    ['2-wire', 'sinking'],
    ['2-wire', 'sourcing'],
    ['dry contact', 'sinking'],
    ['dry contact', 'sourcing'],
  ] as const
).flatMap(([output, card]) =>
  (['NO', 'NC'] as const).map((contact) => [`${output} ${contact} on ${card}`, circuitOf(output, card, contact)] as const),
)

describe.each(circuits)('%s', (_, circuit) => {
  const table = faultTable(circuit)
  const rows = 'refused' in table ? [] : table.map(({ id }) => id)

  test('has a table', () => expect(rows.length).toBeGreaterThan(12))

  test('that is healthy in simulation is found healthy, and nothing else fits better', () => {
    expect(ids(simulate(circuit, 'healthy', limits), circuit)[0]).toBe('healthy')
  })

  test.each(rows)('a simulated circuit that is %s gives that row among the first two, with nothing against it', (id) => {
    const { diagnoses, fits, notJudged } = found(simulate(circuit, id, limits), circuit)
    expect(notJudged).toEqual([])
    expect(fits).toBe(true)
    expect(diagnoses.slice(0, 2).map(({ row }) => row.id)).toContain(id)
  })
})

/** Takes the readings that are asked for, one after the other, until none tells the rows apart. */
function led(circuit: SwitchedCircuit, id: FaultId): { taken: number; left: FaultId[] } {
  const every = simulate(circuit, id, limits)
  const taken: Observation[] = []
  for (;;) {
    const { next, diagnoses } = found(taken, circuit)
    if (!next) return { taken: taken.length, left: diagnoses.map(({ row }) => row.id) }
    const { tellsApart: _, ...place } = next
    const reading = every.find((observation) =>
      Object.entries(place).every(([key, value]) => Object.entries(observation).some(([k, v]) => k === key && v === value)),
    )
    if (!reading || taken.length > 8) throw new Error(`${JSON.stringify(next)} after ${taken.length}`)
    taken.push(reading)
  }
}

describe.each(circuits)('%s, led from reading to reading', (_, circuit) => {
  const table = faultTable(circuit)
  const rows = 'refused' in table ? [] : table.map(({ id }) => id)

  test('every fault is reached in seven readings, with at most three rows left', () => {
    const ends = rows.map((id) => ({ id, ...led(circuit, id) }))
    expect(ends.filter(({ id, left }) => !left.includes(id) || left.length > 3)).toEqual([])
    expect(Math.max(...ends.map(({ taken }) => taken))).toBeLessThanOrEqual(7)
    expect(ends.reduce((sum, { taken }) => sum + taken, 0) / ends.length).toBeLessThan(4.8)
    expect(ends.find(({ id }) => id === 'healthy')?.left).toEqual(['healthy'])
  })
})

/** Parts that a real circuit may have. */
const parts: fc.Arbitrary<Parts> = fc
  .record({
    supplyV: fc.double({ min: 20.4, max: 28.8, noNaN: true }),
    wireOhm: fc.double({ min: 0.1, max: 5, noNaN: true }),
    inputOhm: fc.double({ min: 3000, max: 10_000, noNaN: true }),
    sensorOhm: fc.double({ min: 1600, max: 8000, noNaN: true }),
    switchShare: fc.double({ min: 0.005, max: 0.12, noNaN: true }),
  })
  .map(({ switchShare, ...rest }) => ({ ...rest, switchOhm: switchShare * rest.inputOhm }))

describe.each(circuits)('%s, with any parts, supply and type of input', (_, circuit) => {
  const table = faultTable(circuit)
  const rows = 'refused' in table ? [] : table.map(({ id }) => id)

  test.each(rows)('%s is among the first three, and healthy first where it is', (id) => {
    fc.assert(
      fc.property(parts, fc.constantFrom('Type 1', 'Type 2', 'Type 3'), (made, type) => {
        const own = { ...circuit, supplyV: made.supplyV, limits: inputLimits[type] }
        const first = ids(simulate(own, id, inputLimits[type], made), own).slice(0, id === 'healthy' ? 1 : 3)
        expect(first).toContain(id)
      }),
      { numRuns: 10 },
    )
  })
})

/** The same change of lights in both states. */
const shows = (indicator: Indicator, [target, none]: readonly [Light, Light]): Observation[] => [
  { state: 'target', indicator, shows: target },
  { state: 'none', indicator, shows: none },
]
const reads = (point: Point, target: number, none?: number): Observation[] => [
  { state: 'target', point, value: target },
  ...(none === undefined ? [] : [{ state: 'none', point, value: none } as const]),
]
const follows = ['lit', 'dark'] as const
const dark = ['dark', 'dark'] as const

// Source: circuit analysis and common practice.
describe('single cases', () => {
  test('DI-15: NPN on a sinking input is refused', () => {
    expect(diagnose([], { ...pnp, output: 'npn' })).toEqual({ refused: 'npn-on-sinking-input' })
    expect(faultTable({ ...npn, output: 'pnp' })).toEqual({ refused: 'pnp-on-sourcing-input' })
  })

  test('DI-16: LED on, 22 V at the sensor, 0 V at the input: the signal wire is open', () => {
    const seen: Observation[] = [
      { state: 'target', indicator: 'output-led', shows: 'lit' },
      ...reads('output-at-sensor', 22),
      ...reads('input-at-card', 0),
    ]
    expect(ids(seen, pnp)[0]).toBe('signal-open')
  })

  test('DI-17: no supply at the sensor; brown to 0 V tells which pole is missing', () => {
    const seen = [...shows('output-led', dark), ...reads('supply-at-sensor', 0, 0)]
    expect(ids(seen, pnp).slice(0, 2).sort()).toEqual(['l-minus-open', 'l-plus-open'])
    expect(ids([...seen, ...reads('brown-to-common', 24)], pnp)).toEqual(['l-minus-open'])
    expect(ids([...seen, ...reads('brown-to-common', 0)], pnp)).toEqual(['l-plus-open'])
    expect(found(seen, pnp).next).toMatchObject({ point: 'brown-to-common' })
  })

  test('DI-18: the whole supply at the input in both states: shorted to L+', () => {
    expect(ids(reads('input-at-card', 24, 24), pnp)[0]).toBe('signal-shorted-to-l-plus')
    expect(ids(reads('input-at-card', 21.8, 21.8), pnp)[0]).toBe('always-senses')
  })

  test('DI-19: −24 V at the sensor: reversed', () => {
    expect(ids([...shows('output-led', dark), ...reads('supply-at-sensor', -24)], pnp)).toEqual(['supply-reversed'])
  })

  test('DI-20, DI-21: NPN on a sourcing input', () => {
    expect(ids([...shows('output-led', follows), ...reads('input-at-card', 24, 24)], npn)[0]).toBe('signal-open')
    expect(ids([...shows('output-led', follows), ...reads('input-at-card', 0, 0), ...shows('tag', ['lit', 'lit'])], npn)[0]).toBe(
      'signal-shorted-to-l-minus',
    )
  })
})

describe('what a technician sees first', () => {
  test('the sensor reacts and the controller does not: the signal wire comes first', () => {
    expect(ids([...shows('output-led', follows), ...shows('tag', dark)], pnp)[0]).toBe('signal-open')
  })

  test('the tag is on and nothing is there: the short, the false target and the forced bit', () => {
    const first = ids([{ state: 'none', indicator: 'tag', shows: 'lit' }], pnp).slice(0, 5)
    expect(first).toEqual(expect.arrayContaining(['signal-shorted-to-l-plus', 'always-senses', 'tag-stays-on']))
    const card: Observation = { state: 'none', indicator: 'card-led', shows: 'dark' }
    expect(ids([{ state: 'none', indicator: 'tag', shows: 'lit' }, card], pnp)[0]).toBe('tag-stays-on')
  })

  test('the next reading tells the first rows apart', () => {
    const seen = [...shows('output-led', follows), ...shows('tag', dark)]
    const { next, diagnoses } = found(seen, pnp)
    expect(diagnoses.length).toBeGreaterThan(2)
    expect(next).toBeDefined()
    expect(seen).not.toContainEqual(expect.objectContaining(next))
  })

  test('each row says what speaks for it and against it', () => {
    const odd = [...reads('input-at-card', 21.5, 0), ...shows('card-led', follows), ...shows('tag', follows), ...reads('supply-at-sensor', -24)]
    const { fits, diagnoses } = found(odd, pnp)
    expect(fits).toBe(false)
    expect(diagnoses[0]?.row.id).toBe('healthy')
    expect(diagnoses[0]?.speaksAgainst).toEqual(reads('supply-at-sensor', -24))
    expect(diagnoses[0]?.speaksFor.length).toBe(6)
  })
})

describe('what is missing', () => {
  test('a voltage without a supply is not judged, a light is', () => {
    const { supplyV: _, ...without } = pnp
    const seen = [...reads('input-at-card', 0), ...shows('output-led', follows), ...shows('tag', dark)]
    const { notJudged, diagnoses } = found(seen, without)
    expect(notJudged).toEqual([{ observation: seen[0], missing: ['supply'] }])
    expect(diagnoses[0]?.row.id).toBe('signal-open')
  })

  test('a point or a light that the circuit does not have is not judged', () => {
    const seen: Observation[] = [...reads('loop-current', 3), { state: 'none', indicator: 'fault-led', shows: 'lit' }]
    expect(found(seen, pnp).notJudged).toEqual(seen.map((observation) => ({ observation, missing: ['place'] })))
    expect(found(shows('output-led', follows), circuitOf('dry contact', 'sinking')).notJudged.length).toBe(2)
  })

  test('a value that is no number is not judged', () => {
    const seen = reads('input-at-card', Number.NaN)
    expect(found(seen, pnp).notJudged).toEqual([{ observation: seen[0], missing: ['number'] }])
  })

  test('nothing seen: every row is possible, and the first thing to look at is named', () => {
    const { diagnoses, next } = found([], pnp)
    const table = faultTable(pnp)
    expect(diagnoses.length).toBe('refused' in table ? 0 : table.length)
    expect(next).toBeDefined()
  })
})

describe.each(['NO', 'NC'] as const)('NAMUR with an amplifier set to %s', (contact) => {
  const circuit: SwitchedCircuit = { output: 'namur', card: 'namur amplifier', contact, namur: namurLimits }
  const out = contact === 'NO' ? follows : (['dark', 'lit'] as const)
  const quiet = shows('fault-led', dark)

  test.each([
    ['healthy', [...reads('loop-current', 0.8, 2.6), ...quiet, ...shows('card-led', out), ...shows('tag', out)]],
    ['signal-open', [...reads('loop-current', 0.02, 0.02), ...shows('fault-led', ['lit', 'lit'])]],
    ['line-shorted', [...reads('loop-current', 7.6, 7.6), ...shows('fault-led', ['lit', 'lit'])]],
    ['never-senses', [...reads('loop-current', 2.6, 2.6), ...quiet]],
    ['always-senses', [...reads('loop-current', 0.8, 0.8), ...quiet]],
    ['no-state', [...reads('loop-current', 1.6, 2.6), ...quiet]],
    ['amplifier-without-supply', [...reads('loop-current', 0, 0), ...quiet]],
    ['tag-stays-on', [...reads('loop-current', 0.8, 2.6), ...quiet, ...shows('card-led', out), ...shows('tag', ['lit', 'lit'])]],
    [
      'amplifier-inverted',
      [...reads('loop-current', 0.8, 2.6), ...quiet, ...shows('card-led', contact === 'NO' ? ['dark', 'lit'] : ['lit', 'dark'])],
    ],
  ] as const)('%s', (id, seen) => expect(ids(seen, circuit)[0]).toBe(id))

  test('without limits a current is not judged', () => {
    const { namur: _, ...without } = circuit
    expect(found(reads('loop-current', 0.8), without).notJudged).toMatchObject([{ missing: ['namur'] }])
  })
})

describe('words', () => {
  test('say all in every language, in sentences', () => {
    expect(languagesWithSignalWords).toEqual(['en', 'es'])
    expect(signalWords('de')).toBeUndefined()
    for (const language of languagesWithSignalWords) {
      for (const { diagnosis, nextStep } of [
        ...Object.values(signalWords(language)?.faults ?? {}),
        ...Object.values(signalWords(language)?.causes ?? {}),
      ]) {
        expect(diagnosis).toMatch(/^\p{Lu}.*\.$/u)
        expect(nextStep).toMatch(/^\p{Lu}.*\.$/u)
      }
    }
  })
})
