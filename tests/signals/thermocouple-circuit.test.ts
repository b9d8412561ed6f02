import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { thermocoupleCauses, thermovoltageCauses } from '../../src/signals/fault/thermocouple-causes.ts'

type Metal = 'J' | 'K' | 'T' | 'copper'

/** The tables of NIST in whole degrees: the circuit is added up from them and knows nothing of our functions. */
const tables = new Map((['J', 'K', 'T'] as const).map((type) => [type, tableOf(type)] as const))

function tableOf(type: 'J' | 'K' | 'T'): ReadonlyMap<number, number> {
  const lines = readFileSync(`tests/fixtures/thermocouple/type_${type.toLowerCase()}.tab`, 'utf8').split('\n')
  const points = lines.flatMap((line) => {
    const [first, ...volts] = line.trim().split(/\s+/).map(Number)
    const [one = 0, two = one] = volts
    // Below zero the columns run downwards.
    const step = two < one ? -1 : 1
    return first === undefined || !Number.isInteger(first) ? [] : volts.map((mv, index) => [first + step * index, mv] as const)
  })
  return new Map(points.sort(([a], [b]) => a - b))
}

const at = (metal: Metal, celsius: number) => (metal === 'copper' ? 0 : (tables.get(metal)?.get(celsius) ?? Number.NaN))

/** Pieces of cable from the process to the terminals; `sign` −1 where the cores are swapped. */
type Piece = readonly [metal: Metal, fromC: number, toC: number, sign?: 1 | -1]
const emf = (pieces: readonly Piece[]) => pieces.reduce((sum, [metal, fromC, toC, sign = 1]) => sum + sign * (at(metal, fromC) - at(metal, toC)), 0)

/** What a card of a type shows: the first whole degree at which its table has the voltage, with its own terminals added. */
function shown(card: 'J' | 'K' | 'T', mv: number, terminalC: number): number {
  const wanted = mv + at(card, terminalC)
  return [...(tables.get(card) ?? [])].find(([, volts]) => volts >= wanted)?.[0] ?? Number.NaN
}

describe.each([
  [180, 60, 30],
  [95, 45, 28],
  [250, 90, 35],
])('a type K couple at %d °C, its head at %d °C, the terminals at %d °C', (trueC, headC, terminalC) => {
  const causes = (pieces: readonly Piece[], card: 'J' | 'K' | 'T' = 'K') => {
    const ids = thermocoupleCauses({ type: 'K', shownC: shown(card, emf(pieces), terminalC), trueC, terminalC, toleranceK: 4 }).map(({ id }) => id)
    return ids
  }
  const couple: Piece = ['K', trueC, headC]

  test('in order', () => expect(causes([couple, ['K', headC, terminalC]])).toEqual([]))
  test('a cable that is shorted near the cabinet', () => expect(causes([['K', terminalC, terminalC]])).toContain('thermocouple-shorted'))
  test('cores swapped on the whole way: below the range of the type where the process is hot', () => {
    const swapped: readonly Piece[] = [
      ['K', trueC, headC, -1],
      ['K', headC, terminalC, -1],
    ]
    const [beyond] = thermovoltageCauses('K', emf(swapped), terminalC)
    expect([beyond?.id ?? causes(swapped)[0]]).toEqual(['thermocouple-reversed'])
    expect(thermovoltageCauses('K', -emf(swapped), terminalC)).toEqual([])
  })
  test('copper from the head on', () => expect(causes([couple, ['copper', headC, terminalC]])).toContain('thermocouple-cable-wrong'))
  test('a card that is set to type J', () => expect(causes([couple, ['K', headC, terminalC]], 'J')).toContain('thermocouple-type-wrong'))
  test('a couple of type J on a card for type K', () =>
    expect(
      causes([
        ['J', trueC, headC],
        ['J', headC, terminalC],
      ]),
    ).toContain('thermocouple-type-wrong'))
})
