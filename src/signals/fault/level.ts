import { numberOf } from '../../law/law.ts'
import type { Band } from '../verdict.ts'
import type { SwitchedCircuit } from './circuit.ts'
import type { Point } from './row.ts'

/**
 * What a reading is, in the terms of its circuit. The live rail is the one that the sensor switches: L+ on a sinking
 * input, 0 V on a sourcing one; the other is the return rail.
 */
export type Level =
  /** The live rail, less what the sensor drops. */
  | 'driven'
  /** The live rail without any drop. */
  | 'live'
  /** The return rail, but for leakage. */
  | 'released'
  /** The return rail. */
  | 'return'
  /** The return rail, but for what a sensor of the wrong polarity drops. */
  | 'low-side'
  /** Between the limits of the input. */
  | 'between'
  /** Less than the live rail less the drop: between the limits, or still on. */
  | 'weak'
  /** Anything from the return rail to somewhat below the live one. */
  | 'swings'
  | 'full-supply'
  | 'low-supply'
  | 'sagging-supply'
  | 'reversed-supply'
  | 'nothing'
  /** Across the sensor: what it drops. */
  | 'drop'
  /** Across the sensor: more than leaves the input on. */
  | 'high-drop'
  /** Across the sensor: the supply, but for leakage. */
  | 'rest'
  /** Across a contact that is closed, and should read nothing. */
  | 'contact-drop'
  | 'high-impedance'
  | 'low-impedance'
  | 'namur-between'
  | 'line-break'
  | 'line-short'

/** What a level is in figures. `usual` lies inside the band and is where most good readings are. */
export interface LevelBand {
  band: Required<Band>
  usual: Required<Band>
}

/** What is missing for a level in figures. */
export interface NoBand {
  missing: readonly ('supply' | 'drop' | 'limits' | 'namur')[]
}

/** How near a reading in V is to what it should equal: meter, wire and terminals together. Common practice. */
export const meterMarginV = 0.3
/** From this share of the supply on, a sensor has its supply; below the lower one it has not. Common practice. */
const [fullShare, lowShare] = [0.85, 0.95]

const mirrored: readonly Point[] = ['input-at-card', 'output-at-sensor', 'input-to-cabinet']

/** The band of a level at a point, in V (mA in a NAMUR circuit), or what is missing for it. */
export function levelBand(level: Level, point: Point, circuit: SwitchedCircuit): LevelBand | NoBand {
  if (point === 'loop-current') return namurBand(level, circuit)
  const { supplyV, dropV, limits } = circuit
  const missing = [
    ...(supplyV === undefined ? (['supply'] as const) : []),
    ...(dropV === undefined ? (['drop'] as const) : []),
    ...(limits === undefined ? (['limits'] as const) : []),
  ]
  if (supplyV === undefined || dropV === undefined || limits === undefined) return { missing }
  const supply = numberOf(supplyV)
  const lowest = circuit.lowestSupplyV === undefined ? 0 : numberOf(circuit.lowestSupplyV)
  const found = voltageBand(level, supply, numberOf(dropV), limits.offToV.value, limits.onFromV.value, lowest)
  if (circuit.card !== 'sourcing' || !mirrored.includes(point)) return found
  const turn = ({ low, high }: Required<Band>) => ({ low: supply - high, high: supply - low })
  return { band: turn(found.band), usual: turn(found.usual) }
}

function voltageBand(level: Level, supply: number, drop: number, offTo: number, onFrom: number, lowest: number): LevelBand {
  const m = meterMarginV
  const only = (low: number, high: number): LevelBand => ({ band: { low, high }, usual: { low, high } })
  const mostly = (low: number, high: number, usualLow: number, usualHigh: number): LevelBand => ({
    band: { low, high },
    usual: { low: usualLow, high: usualHigh },
  })
  switch (level) {
    case 'driven':
      return mostly(Math.min(onFrom, supply - drop - m), supply + m, supply - drop - m, drop > m ? supply - m : supply + m)
    case 'live':
      return only(supply - m, supply + m)
    case 'released':
      return mostly(-m, offTo, -m, Math.min(1, offTo))
    case 'return':
    case 'nothing':
      return only(-m, m)
    case 'low-side':
    case 'drop':
      return only(-m, drop + m)
    case 'between':
      return only(offTo, onFrom)
    case 'weak':
      return mostly(offTo, supply + m, offTo, onFrom)
    case 'high-drop':
      return only(Math.min(drop, supply - onFrom) - m, supply - offTo + m)
    case 'swings':
      return only(-m, supply - 1)
    case 'full-supply':
      return mostly(fullShare * supply, supply + m, lowShare * supply, supply + m)
    case 'low-supply':
      return only(m, supply < lowest ? supply + m : lowShare * supply)
    case 'sagging-supply':
      return only(-m, lowShare * supply)
    case 'reversed-supply':
      return only(-supply - m, -fullShare * supply)
    case 'rest':
      return mostly(supply - offTo - m, supply + m, supply - Math.min(1, offTo) - m, supply + m)
    case 'contact-drop':
      return only(0.5, supply)
    default:
      throw new Error(`${level} is no level of a voltage`)
  }
}

function namurBand(level: Level, { namur }: SwitchedCircuit): LevelBand | NoBand {
  if (!namur) return { missing: ['namur'] }
  const only = (low: number, high: number): LevelBand => ({ band: { low, high }, usual: { low, high } })
  const tiny = 0.01
  switch (level) {
    case 'line-break':
      return only(-tiny, namur.possibleBreakMa.value - tiny)
    case 'high-impedance':
      return only(namur.possibleBreakMa.value, namur.highImpedanceMa.value)
    case 'namur-between':
      return only(namur.highImpedanceMa.value + tiny, namur.lowImpedanceMa.value - tiny)
    case 'low-impedance':
      return only(namur.lowImpedanceMa.value, namur.possibleShortMa.value)
    case 'line-short':
      return only(namur.possibleShortMa.value + tiny, 2 * namur.certainShortMa.value)
    default:
      throw new Error(`${level} is no level of a NAMUR circuit`)
  }
}
