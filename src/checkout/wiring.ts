import type { Quantity, Stated } from '../law/law.ts'
import type { CheckoutSupply } from '../model/checkout-data.ts'
import type { Card, Device, Machine, Signal } from '../model/machine.ts'
import { conductorOhmPerKm, wireResistance } from '../signals/cable.ts'
import { type Values, valuesOfCard, valuesOfDevice } from './values-of.ts'

/** A device with all that its expectations are made of. */
export interface Wired {
  device: Device
  machine: Machine
  values: Values
  signal: Signal | undefined
  card: Card | undefined
  ofCard: Values
  supply: CheckoutSupply | undefined
  /** As measured, or the nominal one; in V. */
  supplyV: Quantity | undefined
}

/** One signal of a device on its card. `measuredV`: the supply that was measured. */
export function wire(device: Device, signal: Signal | undefined, machine: Machine, measuredV?: number): Wired {
  const values = valuesOfDevice(device, machine)
  const card = signal?.card && machine.cards.find(({ card }) => card.value === signal.card?.value)
  const ofCard = valuesOfCard(card, machine)
  const name = values.text('supply') ?? ofCard.text('supply')
  const supply = name === undefined ? undefined : machine.checkout?.supplies.find((it) => it.name.value === name)
  const measured: Stated | undefined = measuredV === undefined ? undefined : { value: measuredV, basis: 'measured' }
  const nominal: Stated | undefined = supply && { value: supply.nominalV.value, basis: supply.nominalV.from }
  return { device, machine, values, signal, card, ofCard, supply, supplyV: measured ?? nominal }
}

/** Ω/km of a conductor of the cable; undefined where its section is not given or not in the tables. */
export function ohmPerKm({ values }: Wired): Stated | undefined {
  const areaMm2 = values.number('cableAreaMm2')
  return areaMm2 && conductorOhmPerKm(areaMm2.value, values.choice('conductor') ?? 'class 5')
}

/** Ω of one conductor, one way; undefined where the cable is not given. */
export function wireOhm(wired: Wired): Stated | undefined {
  const result = wireResistance({ lengthM: wired.values.number('cableLengthM'), resistanceOhmPerKm: ohmPerKm(wired) })
  if (!('value' in result)) return undefined
  return { value: result.value, basis: 'measured', source: `${result.formula}, cable and its conductors` }
}
