import type { Quantity } from '../../law/law.ts'
import type { SwitchedCircuit } from '../../signals/fault/circuit.ts'
import type { Indicator, Point, TargetState } from '../../signals/fault/row.ts'
import type { PlatinumClass } from '../../signals/platinum-class.ts'
import type { Band } from '../../signals/verdict.ts'

/** A switching sensor: what is read is held against its healthy circuit, and leads to the fault table. */
export interface SwitchedSheet {
  kind: 'switched'
  circuit: SwitchedCircuit
  /** What the source of the supply may give, in V. */
  supply?: { band: Band; basis: readonly BasisWord[] }
  /** Limits of single readings, by field: those of the card and of the supply. Else those of the fault table. */
  limits?: Readonly<Record<string, { band: Band; basis: readonly BasisWord[] }>>
  expected: readonly Expected[]
}

/** A 4–20 mA transmitter with the range of its signal. */
export interface LoopSheet {
  kind: 'loop'
  low: number
  high: number
  unit: string
  expected: readonly Expected[]
}

/** A resistance thermometer with the range of its signal in °C. */
export interface PlatinumSheet {
  kind: 'platinum'
  iceResistanceOhm: Quantity
  low?: number
  high?: number
  /** Tolerance class, and from and to °C where it holds. */
  tolerance?: { class: PlatinumClass; rangeC: readonly [from: number, to: number] }
  expected: readonly Expected[]
}

/** What else is read of a device, by its own limits. */
export interface Expected {
  at: Place
  /** In words. */
  name: string
  state: string
  band: Band
  unit: string
  basis: readonly BasisWord[]
}
export interface PlainSheet {
  kind: 'plain'
  expected: readonly Expected[]
}

/** What the page gives to the meter: plain data, so that it can be written into the page. */
export type MeterSheet = SwitchedSheet | LoopSheet | PlatinumSheet | PlainSheet

/** Where on the signal path a reading is taken. */
export type Place = 'supply' | 'device' | 'pin' | 'terminal' | 'card' | 'address'

/** `generic`: a usual value of the trade, or one that nobody has held against its source. */
export type BasisWord = 'data sheet' | 'standard' | 'measured' | 'generic'

/** What is read besides the points of the fault table. */
export type FieldName = Point | 'supply' | 'element' | 'leads' | 'reference' | 'value'

export interface Field {
  /** Stands in what the panel keeps: `input-at-card.target`. */
  id: string
  name: FieldName
  at: Place
  /** Unit in which it is judged. */
  unit: string
  state?: TargetState
  /** Name and state in words, of what `expected` asks for. */
  said?: { name: string; state: string }
}

export const placeOfPoint: Readonly<Record<Point, Place>> = {
  'supply-at-sensor': 'pin',
  'output-at-sensor': 'pin',
  'brown-to-common': 'pin',
  'feed-at-sensor': 'pin',
  'across-sensor': 'pin',
  'loop-current': 'terminal',
  'input-at-card': 'terminal',
  'input-to-cabinet': 'terminal',
}
export const placeOfIndicator: Readonly<Record<Indicator, Place>> = {
  'output-led': 'device',
  'card-led': 'card',
  'other-led': 'card',
  'fault-led': 'card',
  tag: 'address',
}
