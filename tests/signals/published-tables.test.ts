import { describe, expect, test } from 'vitest'
import { type ConductorClass, conductorOhmPerKm, conductorSizesMm2, gaugeArea, solidResistance } from '../../src/signals/cable.ts'
import { connectorPins } from '../../src/signals/connector-pins.ts'
import { inputLimits } from '../../src/signals/digital-input.ts'
import { outputRatings } from '../../src/signals/digital-output.ts'
import { bondingCurrentA } from '../../src/signals/electrical-tests.ts'
import { materialFactorRanges } from '../../src/signals/material-factor.ts'
import { outputLimits } from '../../src/signals/sensor-output.ts'
import { valueIn } from './expect-value.ts'

// Source: IEC 60228; below 0.5 mm² its national equivalents.
test.each([
  ['class 2', '0.5 36, 0.75 24.5, 1 18.1, 1.5 12.1, 2.5 7.41, 4 4.61, 6 3.08, 10 1.83, 16 1.15'],
  ['class 5', '0.14 138, 0.25 79, 0.34 56, 0.5 39, 0.75 26, 1 19.5, 1.5 13.3, 2.5 7.98, 4 4.95, 6 3.3, 10 1.91, 16 1.21'],
] satisfies [ConductorClass, string][])('conductors of %s', (conductor, expected) => {
  expect(
    conductorSizesMm2(conductor)
      .map((size) => `${size} ${conductorOhmPerKm(size, conductor)?.value}`)
      .join(', '),
  ).toBe(expected)
})

// Source: ASTM B258, solid copper at 20 °C.
test.each([
  [26, 0.129, 133.9],
  [24, 0.205, 84.21],
  [22, 0.326, 52.96],
  [20, 0.518, 33.31],
  [16, 1.309, 13.17],
  [14, 2.081, 8.29],
  [12, 3.309, 5.21],
  [10, 5.261, 3.28],
  [8, 8.366, 2.06],
])('gauge %d', (gauge, areaMm2, ohmPerKm) => {
  const area = valueIn(gaugeArea({ gauge }))
  expect(area).toBeCloseTo(areaMm2, 3)
  expect(Math.abs(valueIn(solidResistance({ areaMm2: area, resistivityOhmMm2PerM: 0.017241 })) - ohmPerKm)).toBeLessThan(0.0051)
})

// Source: IEC 61131-2; those marked * from memory.
test.each([
  ['Type 1', '-3 5 15 30 0.5* 2 15*'],
  ['Type 2', '-3* 5* 11* 30* 2* 6* 30*'],
  ['Type 3', '-3 5 11 30 1.5 2 15*'],
] as const)('digital input, %s', (type, expected) => {
  const { lowestV, offToV, onFromV, highestV, ignoredMa, neededMa, highestMa } = inputLimits[type]
  const all = [lowestV, offToV, onFromV, highestV, ignoredMa, neededMa, highestMa]
  expect(all.map(({ value, fromMemory }) => `${value}${fromMemory ? '*' : ''}`).join(' ')).toBe(expected)
})

// Source: IEC 61131-2, from memory.
test('digital outputs: rated and highest current, drop, leakage', () => {
  const rows = [...outputRatings].map(([ratedA, { highestA, dropV, leakageMa }]) => [ratedA, highestA.value, dropV.value, leakageMa.value])
  expect(rows).toEqual([
    [0.1, 0.12, 3, 0.1],
    [0.25, 0.3, 3, 0.5],
    [0.5, 0.6, 3, 0.5],
    [1, 1.2, 3, 1],
    [2, 2.4, 3, 1],
  ])
  expect([...outputRatings.values()].every(({ highestA, dropV, leakageMa }) => highestA.fromMemory && dropV.fromMemory && leakageMa.fromMemory)).toBe(
    true,
  )
})

// Source: IEC 60947-5-2, electrical limits, from memory.
test('what a switch drops, leaks and needs', () => {
  const row = ({ dropV, leakageMa, minimumLoadMa }: (typeof outputLimits)['pnp']) => [dropV.value, leakageMa.value, minimumLoadMa.value]
  expect(row(outputLimits.pnp)).toEqual([3.5, 0.5, 0])
  expect(row(outputLimits.npn)).toEqual([3.5, 0.5, 0])
  expect(row(outputLimits['2-wire'])).toEqual([8, 1.5, 5])
  expect(row(outputLimits['dry contact'])).toEqual([0, 0, 0])
  expect(outputLimits['2-wire'].dropV.fromMemory).toBe(true)
})

// Source: primers of the trade and data sheets; capacitive from memory.
test('factors of materials', () => {
  expect(materialFactorRanges.inductive).toEqual({
    'mild steel': [1, 1],
    'stainless steel': [0.6, 1],
    'cast iron': [0.93, 1.05],
    nickel: [0.65, 0.75],
    brass: [0.32, 0.51],
    aluminium: [0.2, 0.5],
    copper: [0.15, 0.45],
  })
  expect(materialFactorRanges.capacitive).toEqual({
    metal: [1, 1],
    water: [1, 1],
    wood: [0.2, 0.7],
    glass: [0.3, 0.5],
    pvc: [0.2, 0.4],
    oil: [0.1, 0.2],
  })
})

// Source: IEC 60204-1, 18.2.
test('currents for a test of bonding', () => expect(bondingCurrentA).toEqual({ low: 0.2, high: 10 }))

// Source: IEC 60947-5-2, connections.
describe('pins', () => {
  test.each([
    ['3-wire NO', '1 BN L+, 3 BU L−, 4 BK NO output'],
    ['3-wire NC', '1 BN L+, 3 BU L−, 2 BK NC output'],
  ] as const)('%s', (wiring, expected) => {
    expect(connectorPins[wiring].map(({ pin, core, carries }) => `${pin} ${core} ${carries}`).join(', ')).toBe(expected)
  })
})
