import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { currentCauses, imbalanceOf, type Phases, windingCauses } from '../../src/signals/fault/phase-causes.ts'
import { type Net, solve } from './simulated-circuit.ts'

/** Resistance between two terminals of a net: 1 V over 1 Ω in series, by the voltage that is left. */
function between(net: Net, from: string, to: string): number {
  const named = (node: string) => (node === from ? 'probe' : node === to ? '0V' : node)
  const nodes = solve([['L+', 'probe', 1], ['probe', '0V', 1e9], ...net.map(([a, b, ohm]) => [named(a), named(b), ohm] as const)], 1)
  const volts = nodes.get('probe') ?? Number.NaN
  return volts / (1 - volts)
}
const readings = (net: Net): Phases => [between(net, 'U', 'V'), between(net, 'V', 'W'), between(net, 'W', 'U')]
/** The wires of the terminals hang loose at 10 MΩ, as in a meter. */
const loose: Net = [
  ['U', 'earth', 1e7],
  ['V', 'earth', 1e7],
  ['W', 'earth', 1e7],
]
const star = (u: number, v: number, w: number): Net => [['U', 'star', u], ['V', 'star', v], ['W', 'star', w], ...loose]
const delta = (uv: number, vw: number, wu: number): Net => [['U', 'V', uv], ['V', 'W', vw], ['W', 'U', wu], ...loose]

const ids = (net: Net) => windingCauses(readings(net)).map(({ id }) => id)

describe.each([1.2, 4, 30])('windings of %d Ω', (ohm) => {
  test('in order', () => expect([ids(star(ohm, ohm, ohm)), ids(delta(ohm, ohm, ohm))]).toEqual([[], []]))
  test('one open, in star and in delta', () => {
    expect(ids(star(1e9, ohm, ohm))[0]).toBe('winding-open')
    expect(ids(delta(1e9, ohm, ohm))[0]).toBe('winding-open')
  })
  test('one with a third of its turns shorted', () => {
    expect(ids(star(0.67 * ohm, ohm, ohm))[0]).toBe('windings-differ')
    expect(ids(delta(ohm, 0.67 * ohm, ohm))[0]).toBe('windings-differ')
  })
})

// Source of 5 %: common practice. By hand: (10.5 − 10)/10.17 = 4.9 %.
test('up to the limit they are equal, whatever their order', () => {
  expect(imbalanceOf([10, 10, 10.5])).toBeCloseTo(4.918, 3)
  expect([windingCauses([10, 10, 10.5]), windingCauses([10, 11, 10])].map((all) => all.length)).toEqual([0, 1])
  fc.assert(
    fc.property(
      fc.tuple(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
      ),
      ([a, b, c]) => {
        expect(windingCauses([c, a, b])).toEqual(windingCauses([a, b, c]))
      },
    ),
  )
  expect(windingCauses([Number.NaN, 1, 1])).toEqual([])
})

describe('currents of a motor of 3.5 A', () => {
  test.each<[string, Phases, string | undefined]>([
    ['in order', [3.1, 3.2, 3.1], undefined],
    ['one phase without', [5.4, 5.5, 0.1], 'phase-missing'],
    ['uneven', [3, 3.4, 2.6], 'phases-differ'],
    ['above the plate', [4.1, 4.2, 4.1], 'motor-overloaded'],
    ['standing still', [0, 0, 0], undefined],
  ])('%s', (_, currents, expected) => expect(currentCauses(currents, 3.5)[0]?.id).toBe(expected))
  test('without a plate nothing is too much', () => expect(currentCauses([9, 9, 9], undefined)).toEqual([]))
})
