import type { Located, Place } from '../source/place.ts'
import type { Origin } from './schema/checkout-file.ts'
import type {
  CheckoutChoice,
  CheckoutChoiceName,
  CheckoutName,
  CheckoutNumberName,
  CheckoutTechnology,
  CheckoutTextName,
} from './schema/checkout-values.ts'

/** A number of checkout.yaml, in the unit that its name ends with. */
export interface CheckoutNumber {
  value: number
  from: Origin
  source: string | undefined
  /** The number itself. */
  place: Place
}

/** What checkout.yaml says of a card, a part or a device. */
export interface CheckoutEntry {
  /** As written, at its key. */
  name: Located<string>
  /** Of a part. */
  technology: Located<CheckoutTechnology> | undefined
  numbers: Readonly<Partial<Record<CheckoutNumberName, CheckoutNumber>>>
  choices: { readonly [K in CheckoutChoiceName]?: Located<CheckoutChoice<K>> }
  texts: Readonly<Partial<Record<CheckoutTextName, Located<string>>>>
  /** Names of the values that are given, each with the place of its key. */
  keys: readonly Located<CheckoutName>[]
}

/** A supply of the controls, in V. */
export interface CheckoutSupply {
  name: Located<string>
  nominalV: CheckoutNumber
  lowestV: CheckoutNumber | undefined
  highestV: CheckoutNumber | undefined
}

/** What checkout.yaml holds, whatever the unit. */
export interface CheckoutData {
  supplies: readonly CheckoutSupply[]
  cards: readonly CheckoutEntry[]
  parts: readonly CheckoutEntry[]
  devices: readonly CheckoutEntry[]
}
