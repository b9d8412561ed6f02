import { isComputed } from '../../law/law.ts'
import { mostImbalance, phaseImbalance } from '../motor.ts'
import { type Cause, named } from './cause.ts'

export type Phases = readonly [number, number, number]

/** From this share of the others on a winding is open: in star two readings are endless, in delta one is twice the others. Common practice. */
const openShare = 1.8
/** Share of the largest current below which a phase carries none. Common practice. */
const deadShare = 0.05

/** How far three phases differ, in % of their mean; undefined for what is none. */
export function imbalanceOf([phaseA, phaseB, phaseC]: Phases): number | undefined {
  const found = phaseImbalance({ phaseA, phaseB, phaseC })
  return isComputed(found) ? found.value : undefined
}

const isBalanced = (phases: Phases) => (imbalanceOf(phases) ?? Number.POSITIVE_INFINITY) <= mostImbalance.value

/** Likely causes of three resistances between the terminals of a motor, in Ω. */
export function windingCauses(windings: Phases): Cause[] {
  if (!windings.every((ohm) => Number.isFinite(ohm) && ohm >= 0)) return []
  const [lowest, middle, highest] = [...windings].sort((a, b) => a - b) as [number, number, number]
  if (lowest === 0) return named('turns-shorted')
  if (isBalanced(windings)) return []
  // In star the one reading that is left goes through the two good windings.
  return highest > openShare * middle || middle > openShare * lowest ? named('winding-open', 'windings-differ') : named('windings-differ')
}

/** Likely causes of three currents of a running motor, in A. */
export function currentCauses(currents: Phases, ratedA: number | undefined): Cause[] {
  if (!currents.every((ampere) => Number.isFinite(ampere) && ampere >= 0)) return []
  const [lowest, , highest] = [...currents].sort((a, b) => a - b) as [number, number, number]
  if (highest === 0) return []
  if (lowest < deadShare * highest) return named('phase-missing')
  const isOver = ratedA !== undefined && highest > ratedA
  if (!isBalanced(currents)) return named('phases-differ', 'windings-differ')
  return isOver ? named('motor-overloaded') : []
}
