import { describe, expect, test } from 'vitest'
import { energyOfStore } from '../../src/energy/store.ts'
import { waitOfSource } from '../../src/energy/wait-of-source.ts'
import { isComputed } from '../../src/law/law.ts'
import { loadSound } from '../sound-machine.ts'

/** The source of a machine whose energy.yaml gives this store, in any units. */
function sourceWith(store: string) {
  const energy = `points:
  - { point: E1, tag: DISC1, device: disconnect-switch, safe: 'OFF', service: 'ON', place: door, hardware: padlock, lockable: true }
sources:
  - id: supply
    form: electrical
    name: Supply
    magnitude: [{ value: 400, unit: V }]
    areas: [press]
    hazard: electric shock
    isolation: [E1]
    stored: true
    store: ${store}
    dissipate: Wait
    verify: { by: [voltage-test], method: Measure, expect: 0 V }
`
  const { machines, findings } = loadSound(new Map([['data/energy.yaml', energy]]))
  const [source] = machines[0]?.energy ?? []
  if (!source) throw new Error(JSON.stringify(findings))
  return source
}

// The cases of tests/energy, written in units of the trade.
test.each([
  ['{ kind: receiver, pressure: { value: 10, unit: bar }, volume: { value: 500, unit: l }, gas: air }', 680_400],
  ['{ kind: receiver, pressure: { value: 1, unit: MPa }, volume: { value: 0.5, unit: m³ }, adiabaticExponent: 1.4 }', 680_400],
  ['{ kind: spring, springRate: { value: 5, unit: N/mm }, deflection: { value: 150, unit: mm } }', 56.25],
  ['{ kind: torsion-spring, torsionRate: { value: 2, unit: Nm/rad }, angle: { value: 90, unit: ° } }', 2.4674],
  ['{ kind: raised-load, mass: { value: 1.2, unit: t }, height: { value: 45, unit: cm } }', 5295.6],
  ['{ kind: rotor, momentOfInertia: { value: 1.8, unit: kg·m² }, speed: { value: 1500, unit: 1/min } }', 22_207],
  [
    '{ kind: compressed-liquid, pressure: { value: 250, unit: bar }, volume: { value: 50, unit: l }, bulkModulus: { value: 1.5, unit: GPa } }',
    10_417,
  ],
  ['{ kind: vacuum, volume: { value: 1, unit: m³ } }', 101_325],
])('%s holds %d J', (store, joule) => {
  const [first] = sourceWith(`[${store}]`).stores
  const energy = first && energyOfStore(first)
  expect(energy && isComputed(energy) ? energy.value : energy).toBeCloseTo(joule, joule > 1000 ? -2 : 2)
})

// A precharge of 98.98675 bar gauge is 100 bar absolute.
test('an accumulator is given in gauge pressures and computed in absolute ones', () => {
  const [first] = sourceWith(
    '[{ kind: accumulator, volume: { value: 10, unit: l }, precharge: { value: 98.98675, unit: bar }, highestPressure: { value: 198.98675, unit: bar }, exponent: 1.4 }]',
  ).stores
  const energy = first && energyOfStore(first)
  expect(energy && isComputed(energy) ? energy.value : energy).toBeCloseTo(54_750, -2)
})

describe('the waiting time', () => {
  const bus = (microfarad: number) =>
    `{ kind: capacitor, capacitance: { value: ${microfarad}, unit: µF }, voltage: { value: 0.565, unit: kV }, resistance: { value: 22, unit: kΩ } }`

  test('of several drives is that of the slowest, and computed from values as written', () => {
    expect(waitOfSource(sourceWith(`[${bus(470)}, ${bus(2200)}]`))).toMatchObject({ seconds: 120, basis: 'computed' })
  })

  test('of a hot liquid needs a limit of the author, in any unit', () => {
    const tank = (limit: string) =>
      `[{ kind: hot-body, temperature: { value: 180, unit: °C }, ambient: { value: 20, unit: °C }, timeConstant: { value: 45, unit: min }${limit} }]`
    expect(waitOfSource(sourceWith(tank('')))).toEqual({ notComputed: ['harmlessAt'] })
    expect(waitOfSource(sourceWith(tank(', harmlessAt: { value: 118.4, unit: °F }')))).toMatchObject({ seconds: 79 * 60 })
    expect(waitOfSource(sourceWith(tank(', surface: ceramic, contact: { value: 10, unit: min }')))).toMatchObject({ seconds: 79 * 60 })
    expect(waitOfSource(sourceWith(tank(', surface: ceramic, contact: { value: 1, unit: min }')))).toEqual({ notComputed: ['harmlessAt'] })
  })

  test('of a rotor with a drag is that to the speed of the author', () => {
    const fan =
      '{ kind: rotor, momentOfInertia: { value: 2, unit: kg·m² }, speed: { value: 3000, unit: rpm }, viscousDrag: { value: 0.1, unit: Nm·s/rad }'
    expect(waitOfSource(sourceWith(`[${fan} }]`))).toEqual({ notComputed: ['harmlessAt'] })
    // 20 s times ln 30 is 68.02 s.
    expect(waitOfSource(sourceWith(`[${fan}, harmlessAt: { value: 100, unit: 1/min } }]`))).toMatchObject({ seconds: 120 })
  })
})
