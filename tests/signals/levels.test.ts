import { describe, expect, test } from 'vitest'
import { inputLimits } from '../../src/signals/digital-input.ts'
import type { SwitchedCircuit } from '../../src/signals/fault/circuit.ts'
import { type Level, levelBand } from '../../src/signals/fault/level.ts'
import type { Point } from '../../src/signals/fault/row.ts'
import { namurLimits } from '../../src/signals/namur.ts'

const pnp: SwitchedCircuit = {
  output: 'pnp',
  contact: 'NO',
  card: 'sinking',
  supplyV: 24,
  lowestSupplyV: 20.4,
  dropV: 3.5,
  limits: inputLimits['Type 1'],
}
const npn: SwitchedCircuit = { ...pnp, output: 'npn', card: 'sourcing' }

/** `low…high`, and the usual part where it is another. */
function figures(level: Level, circuit: SwitchedCircuit, point: Point): string {
  const found = levelBand(level, point, circuit)
  if ('missing' in found) return `missing ${found.missing.join(', ')}`
  const [band, usual] = [found.band, found.usual].map(({ low, high }) => `${Number(low.toFixed(3))}…${Number(high.toFixed(3))}`)
  return band === usual ? `${band}` : `${band}, usually ${usual}`
}

// 24 V, a sensor that drops 3.5 V at most, an input of Type 1, and a meter that is right to 0.3 V.
describe('levels in V', () => {
  test.each([
    ['driven', '15…24.3, usually 20.2…23.7'],
    ['live', '23.7…24.3'],
    ['released', '-0.3…5, usually -0.3…1'],
    ['return', '-0.3…0.3'],
    ['low-side', '-0.3…3.8'],
    ['between', '5…15'],
    ['weak', '5…24.3, usually 5…15'],
    ['swings', '-0.3…23'],
  ] as const)('%s at a sinking input', (level, expected) => expect(figures(level, pnp, 'input-at-card')).toBe(expected))

  test.each([
    ['driven', '-0.3…9, usually 0.3…3.8'],
    ['live', '-0.3…0.3'],
    ['released', '19…24.3, usually 23…24.3'],
    ['return', '23.7…24.3'],
    ['between', '9…19'],
  ] as const)('%s at a sourcing input', (level, expected) => {
    expect(figures(level, npn, 'input-at-card')).toBe(expected)
    expect(figures(level, npn, 'output-at-sensor')).toBe(expected)
    expect(figures(level, npn, 'input-to-cabinet')).toBe(expected)
  })

  test.each([
    ['full-supply', '20.4…24.3, usually 22.8…24.3'],
    ['low-supply', '0.3…22.8'],
    ['sagging-supply', '-0.3…22.8'],
    ['reversed-supply', '-24.3…-20.4'],
    ['nothing', '-0.3…0.3'],
    ['drop', '-0.3…3.8'],
    ['high-drop', '3.2…19.3'],
    ['rest', '18.7…24.3, usually 22.7…24.3'],
    ['contact-drop', '0.5…24'],
  ] as const)('%s at the sensor, the same on either card', (level, expected) => {
    expect(figures(level, pnp, 'supply-at-sensor')).toBe(expected)
    expect(figures(level, npn, 'across-sensor')).toBe(expected)
  })

  test('a contact has no drop, and the supply that was measured counts', () => {
    expect(figures('driven', { ...pnp, dropV: 0 }, 'input-at-card')).toBe('15…24.3, usually 23.7…24.3')
    expect(figures('driven', { ...pnp, supplyV: 18 }, 'input-at-card')).toBe('14.2…18.3, usually 14.2…17.7')
    expect(figures('low-supply', { ...pnp, supplyV: 18 }, 'supply-at-sensor')).toBe('0.3…18.3')
  })

  test('nothing is put in the place of what is missing', () => {
    const { supplyV: _, dropV: __, ...rest } = pnp
    expect(figures('driven', rest, 'input-at-card')).toBe('missing supply, drop')
    expect(figures('driven', { ...pnp, limits: undefined }, 'input-at-card')).toBe('missing limits')
    expect(figures('line-break', pnp, 'loop-current')).toBe('missing namur')
  })
})

// Source: IEC 60947-5-6 for the two states; the fault limits are from memory.
test.each([
  ['line-break', '-0.01…0.34'],
  ['high-impedance', '0.35…1.2'],
  ['namur-between', '1.21…2.09'],
  ['low-impedance', '2.1…6'],
  ['line-short', '6.01…14.9'],
] as const)('%s in mA', (level, expected) => expect(figures(level, { ...pnp, namur: namurLimits }, 'loop-current')).toBe(expected))
