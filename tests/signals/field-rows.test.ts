import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { encoderRows } from '../../src/signals/fault/encoder-rows.ts'
import { fieldFindings } from '../../src/signals/fault/field-rows.ts'
import { flowRows } from '../../src/signals/fault/flow-rows.ts'
import { type OutputCircuit, outputRows } from '../../src/signals/fault/output-rows.ts'
import { type EncoderFault, simulateEncoder } from './encoder-simulation.ts'
import { flowFaults, simulateFlow } from './flow-simulation.ts'
import { type OutputFault, simulateOutput } from './output-circuit.ts'

/** A valve of 4.5 W on an output of 0.5 A, and a contactor with electronics on one of 2 A. */
const valve: OutputCircuit = { supplyV: 24, dropV: 0.6, ratedA: 0.5, cableOhm: 0.73, ratedV: 24, loadA: 0.1875, hasElectronics: false }
const contactor: OutputCircuit = { ...valve, ratedA: 2, loadA: 0.5, hasElectronics: true }

const outputFaults: readonly OutputFault[] = [
  'command-missing',
  'output-dark',
  'card-without-load-supply',
  'output-sinks',
  'output-stays-on',
  'output-overloaded',
  'load-shorted',
  'suppressor-conducts',
  'load-wire-open',
  'line-drops',
  'load-open',
  'turns-shorted',
  'load-of-higher-resistance',
  'output-supply-low',
]

describe('a load on an output', () => {
  test.each(outputFaults)('%s is the first of its faults, with every reading', (fault) => {
    const found = fieldFindings(outputRows(valve), simulateOutput(valve, fault))
    // A dead output with its light on: what is met more often comes first.
    const first = fault === 'output-sinks' ? 'card-without-load-supply' : fault
    expect(found).toMatchObject({ healthy: false, fits: true, causes: expect.arrayContaining([expect.objectContaining({ id: fault })]) })
    expect(found?.causes[0]?.id).toBe(first)
  })

  test.each(['load-wire-open', 'load-open', 'command-missing', 'output-stays-on'] as const)('with electronics too: %s', (fault) => {
    const found = fieldFindings(outputRows(contactor), simulateOutput(contactor, fault))
    expect(found?.fits && found.causes.map(({ id }) => id)).toContain(fault)
  })

  test('a good circuit is healthy, with any parts', () => {
    const parts = fc.record({
      supplyV: fc.double({ min: 21, max: 28, noNaN: true }),
      dropV: fc.double({ min: 0.1, max: 3, noNaN: true }),
      loadA: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
      cableOhm: fc.double({ min: 0.01, max: 2, noNaN: true }),
    })
    fc.assert(
      fc.property(parts, (it) => {
        const circuit = { ...valve, ...it }
        expect(fieldFindings(outputRows(circuit), simulateOutput(circuit, 'healthy'))).toMatchObject({ healthy: true, fits: true })
      }),
    )
  })

  test('a fault that is simulated is never ruled out, whatever the parts', () => {
    const parts = fc.record({
      supplyV: fc.double({ min: 22, max: 26, noNaN: true }),
      loadA: fc.double({ min: 0.1, max: 0.25, noNaN: true }),
      cableOhm: fc.double({ min: 0.1, max: 2, noNaN: true }),
    })
    fc.assert(
      fc.property(parts, fc.constantFrom(...outputFaults), (it, fault) => {
        const circuit = { ...valve, ...it }
        const found = fieldFindings(outputRows(circuit), simulateOutput(circuit, fault))
        expect(found?.causes.map(({ id }) => id)).toContain(fault)
      }),
    )
  })

  test('a dead terminal alone names what tells its faults apart', () => {
    const found = fieldFindings(outputRows(valve), { 'terminal.on': 0, 'tag.on': 1 })
    expect(found?.next).toBeDefined()
    expect(found?.causes.length).toBeGreaterThan(2)
  })

  test('what fits no fault says so', () => {
    expect(fieldFindings(outputRows(valve), { 'tag.on': 0, 'led.on': 1, current: 5000, cold: 1 })).toMatchObject({ fits: false })
    expect(fieldFindings(outputRows(valve), {})).toBeUndefined()
  })
})

const encoderFaults: readonly EncoderFault[] = [
  'encoder-without-supply',
  'encoder-stands',
  'channel-a-open',
  'channel-b-open',
  'channels-swapped',
  'edges-set-wrong',
  'pulses-lost',
  'pulses-added',
  'encoder-of-other-resolution',
  'turns-at-other-speed',
]

describe('an encoder', () => {
  const setup = { pulsesPerTurn: 1024, speedPerMin: 90, supplyV: 24 }
  const rows = encoderRows({ pulsesPerTurn: 1024, speedPerMin: 90, lowestSupplyV: 10 })

  test('that is in order', () => expect(fieldFindings(rows, simulateEncoder(setup, 'healthy'))).toMatchObject({ healthy: true, fits: true }))

  test.each(encoderFaults)('%s', (fault) => {
    expect(fieldFindings(rows, simulateEncoder(setup, fault))).toMatchObject({ fits: true })
    expect(fieldFindings(rows, simulateEncoder(setup, fault))?.causes[0]?.id).toBe(fault)
  })

  test('whatever its pulses and its speed', () => {
    const setups = fc.record({ pulsesPerTurn: fc.integer({ min: 100, max: 4000 }), speedPerMin: fc.integer({ min: 10, max: 3000 }) })
    fc.assert(
      fc.property(setups, fc.constantFrom(...encoderFaults), (it, fault) => {
        const found = fieldFindings(encoderRows({ ...it, lowestSupplyV: 10 }), simulateEncoder({ ...it, supplyV: 24 }, fault))
        expect(found?.fits && found.causes.map(({ id }) => id)).toContain(fault)
      }),
      { numRuns: 60 },
    )
  })
})

describe('a flow meter', () => {
  const setup = { pulsesPerLitre: 450, flowLPerMin: 20, supplyV: 24 }
  const rows = flowRows({ pulsesPerLitre: 450, flowLPerMin: 20, lowestSupplyV: 18 })
  /** Two faults of which no reading tells one from the other: what is met more often comes first. */
  const alike: Readonly<Record<string, string>> = { 'flow-pulses-lost': 'flow-factor-wrong', 'flow-of-other-meter': 'flow-otherwise' }

  test('that is in order', () => expect(fieldFindings(rows, simulateFlow(setup, 'healthy'))).toMatchObject({ healthy: true, fits: true }))

  test.each(flowFaults)('%s', (fault) => {
    const found = fieldFindings(rows, simulateFlow(setup, fault))
    expect(found).toMatchObject({ healthy: false, fits: true, causes: expect.arrayContaining([expect.objectContaining({ id: fault })]) })
    expect(found?.causes[0]?.id).toBe(alike[fault] ?? fault)
  })

  test('a flow that was measured is no other flow: the meter is', () => {
    const measured = flowRows({ pulsesPerLitre: 450, flowLPerMin: 12, isFlowMeasured: true, lowestSupplyV: 18 })
    const readings = simulateFlow({ ...setup, flowLPerMin: 12 }, 'flow-of-other-meter')
    expect(fieldFindings(measured, readings)?.causes.map(({ id }) => id)).toEqual(['flow-of-other-meter'])
  })

  test('no pulses at the card: where to read next', () =>
    expect(fieldFindings(rows, { atCard: 0 })).toMatchObject({ next: expect.stringMatching(/flow|supply|atMeter/) }))

  test('whatever its pulses and its flow', () => {
    const setups = fc.record({ pulsesPerLitre: fc.integer({ min: 5, max: 1500 }), flowLPerMin: fc.integer({ min: 20, max: 300 }) })
    fc.assert(
      fc.property(setups, fc.constantFrom(...flowFaults), (it, fault) => {
        const found = fieldFindings(flowRows({ ...it, lowestSupplyV: 18 }), simulateFlow({ ...it, supplyV: 24 }, fault))
        expect(found?.fits && found.causes.map(({ id }) => id)).toContain(fault)
      }),
      { numRuns: 40 },
    )
  })
})
