import type { EnergySource } from '../../model/machine.ts'
import { converted } from '../../model/unit-scale.ts'
import type { Located } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

/** A magnitude may be rounded so much. */
const rounding = 0.01
/** A store takes the highest voltage, with the tolerance of the supply; the magnitude may be without it. Common practice. */
const supplyTolerance = 0.1
/** Quantities that say when a store is harmless, and not how much it holds. */
const notHeld: ReadonlySet<string> = new Set([
  'harmlessAt',
  'ambient',
  'timeConstant',
  'contact',
  'brakingTorque',
  'lineVoltage',
  'liquidEnthalpy',
  'orificeArea',
  'density',
  'effectiveArea',
  'sonicConductance',
])

interface Held {
  value: number
  unit: Located<string>
}

export const magnitudeAgainstStore: Rule = {
  id: 'magnitude-against-store',
  severity: 'error',
  summary: 'A magnitude of an energy source differs from what is given of its store.',
  why: 'The isolation board shows one value, and the energy and the waiting time beside it are computed from another.',
  source: 'house rule',

  *check({ energy }) {
    for (const source of energy) {
      for (const { value, unit } of source.magnitude) {
        const alike = heldIn(source).flatMap((held) => {
          const there = converted(held.value, held.unit.value, unit.value)
          return there === undefined ? [] : [{ held, there }]
        })
        const [first] = alike
        const sum = alike.reduce((total, { there }) => total + there, 0)
        if (!first || [...alike.map(({ there }) => there), sum].some((there) => agrees(value, there, isVoltage(unit.value)))) continue
        yield {
          message: `the magnitude of energy source \`${source.id.value}\` is ${value} ${unit.value}, and its store says ${first.held.value} ${first.held.unit.value}`,
          place: unit.place,
          related: [{ label: 'given here', place: first.held.unit.place }],
          help: 'look at the nameplate, and correct the one that is wrong',
        }
      }
    }
  },
}

const isVoltage = (unit: string) => converted(1, unit, 'V') !== undefined

const heldIn = ({ stores }: EnergySource): Held[] =>
  stores.flatMap(({ quantities }) => Object.entries(quantities).flatMap(([name, held]) => (notHeld.has(name) ? [] : [held])))

function agrees(magnitude: number, stored: number, isOfSupply: boolean): boolean {
  const most = Math.abs(stored) * rounding
  return Math.abs(magnitude - stored) <= most || (isOfSupply && magnitude <= stored && stored <= magnitude * (1 + supplyTolerance) + most)
}
