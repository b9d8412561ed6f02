import { currentCauses, imbalanceOf, type Phases, windingCauses } from '../../signals/fault/phase-causes.ts'
import { mostImbalance } from '../../signals/motor.ts'
import type { Expectation, Field, MotorSheet, Values } from './meter-sheet.ts'
import type { Outcome } from './outcome-of.ts'

const windings = ['windingUv', 'windingVw', 'windingWu'] as const
const currents = ['currentU', 'currentV', 'currentW'] as const
const three = (names: readonly [string, string, string], values: Values): Phases | undefined => {
  const [a, b, c] = [values[names[0]], values[names[1]], values[names[2]]]
  return a === undefined || b === undefined || c === undefined ? undefined : [a, b, c]
}

/** A phase against the other two, and a current against the plate. */
export function motorExpectation({ id, unit }: Field, { ratedA }: MotorSheet, values: Values): Expectation | undefined {
  const phases: readonly string[] | undefined = [windings, currents].find((names) => names.some((name) => name === id))
  if (!phases) return undefined
  const others = phases.flatMap((name) => (name === id ? [] : (values[name] ?? [])))
  const most = phases === currents ? ratedA : undefined
  if (others.length < 2) return most === undefined ? undefined : { band: { high: most }, usual: { high: most }, unit, basis: ['data sheet'] }
  const mean = others.reduce((sum, it) => sum + it, 0) / others.length
  const share = mostImbalance.value / 100
  const band = { low: mean * (1 - share), high: Math.min(mean * (1 + share), most ?? Number.POSITIVE_INFINITY) }
  return { band, usual: band, unit, basis: ['generic'] }
}

/** What three windings, or three currents, say together: how far they differ, in %. */
export function motorValue({ ratedA }: MotorSheet, values: Values): Outcome {
  const [ofWindings, ofCurrents] = [three(windings, values), three(currents, values)]
  const [first, second] = [ofWindings && windingCauses(ofWindings), ofCurrents && currentCauses(ofCurrents, ratedA)]
  const causes = first && first.length > 0 ? first : (second ?? [])
  const shown = first && first.length > 0 ? ofWindings : (ofCurrents ?? ofWindings)
  const value = shown && imbalanceOf(shown)
  if (value === undefined && causes.length === 0) return { kind: 'nothing' }
  // A phase that is dead differs by no share that could be told.
  return { kind: 'value', sign: causes.length > 0 ? 'unbalanced' : 'balanced', unit: '%', causes, ...(value === undefined ? {} : { value }) }
}
