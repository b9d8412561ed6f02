import { numberOf } from '../law/law.ts'
import type { CheckoutTechnology } from '../model/schema/checkout-values.ts'
import { outputRatings } from '../signals/digital-output.ts'
import type { OutputCircuit } from '../signals/fault/output-rows.ts'
import { type Wired, wireOhm } from './wiring.ts'

/** A coil by its own values; a lamp, which is one or more diodes, has a driver in it. */
interface Load {
  ratedV: number
  loadA: number
  hasElectronics: boolean
}

/** What the fault rows of a load ask for; undefined for what is no load on a plain output, or not given whole. Safety outputs carry test pulses: no meter is held to them. */
export function outputCircuitOf(wired: Wired, technology: CheckoutTechnology): OutputCircuit | undefined {
  const { signal, ofCard, supplyV } = wired
  if (signal?.type.value !== 'DO') return undefined
  const load = loadOf(wired, technology)
  const [rated, wire] = [ofCard.number('ratedA'), wireOhm(wired)]
  const rating = rated && outputRatings.get(rated.value)
  const dropV = ofCard.number('dropV') ?? rating?.dropV
  if (!load || !rated || !wire || !dropV || supplyV === undefined) return undefined
  return { supplyV: numberOf(supplyV), dropV: dropV.value, ratedA: rated.value, cableOhm: 2 * wire.value, ...load }
}

function loadOf({ values }: Wired, technology: CheckoutTechnology): Load | undefined {
  const isLamp = technology === 'lamp' || technology === 'push-button'
  const [ratedV, ratedW] = isLamp ? [values.number('ratedV'), values.number('ratedW')] : [values.number('coilV'), values.number('coilW')]
  if (!ratedV || !ratedW || (!isLamp && values.choice('coilFeed') !== 'd.c.')) return undefined
  const hasElectronics = isLamp || values.choice('coilElectronics') !== 'none'
  return { ratedV: ratedV.value, loadA: ratedW.value / ratedV.value, hasElectronics }
}
