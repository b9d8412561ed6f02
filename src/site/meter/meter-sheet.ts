import type { Quantity } from '../../law/law.ts'
import type { SwitchedCircuit } from '../../signals/fault/circuit.ts'
import type { EncoderCircuit } from '../../signals/fault/encoder-rows.ts'
import type { FlowCircuit } from '../../signals/fault/flow-rows.ts'
import type { OutputCircuit } from '../../signals/fault/output-rows.ts'
import type { Indicator, Point, TargetState } from '../../signals/fault/row.ts'
import type { SeenStates } from '../../signals/fault/seen-state.ts'
import type { PlatinumClass } from '../../signals/platinum-class.ts'
import type { ThermocoupleClass } from '../../signals/thermocouple-class.ts'
import type { ThermocoupleType } from '../../signals/thermocouple-coefficients.ts'
import type { Band } from '../../signals/verdict.ts'

/** A switching sensor: what is read is held against its healthy circuit, and leads to the fault table. */
export interface SwitchedSheet {
  kind: 'switched'
  circuit: SwitchedCircuit
  /** What its states are to a reader, where they are no target. */
  seen?: SeenStates
  /** Its device keeps people safe. */
  isSafetyDevice?: boolean
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
  /** Of the input of the card, across which the current can be read. */
  cardOhm?: number
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

/** A transmitter that gives a voltage, with the range of its signal. */
export interface VoltageSheet {
  kind: 'voltage'
  signalLow: number
  signalHigh: number
  low: number
  high: number
  unit: string
  /** Accuracy of the transmitter in V. */
  toleranceV?: number
  expected: readonly Expected[]
}

/** A thermocouple with the range of its signal in °C. */
export interface ThermocoupleSheet {
  kind: 'thermocouple'
  type: ThermocoupleType
  class?: ThermocoupleClass
  /** Of the terminals, in °C; one that is measured on the page wins. */
  terminalC?: number
  low?: number
  high?: number
  expected: readonly Expected[]
}

/** A thermistor by its beta value, with the range of its signal in °C. */
export interface ThermistorSheet {
  kind: 'thermistor'
  referenceOhm: number
  referenceC: number
  betaK: number
  tolerancePercent?: number
  low?: number
  high?: number
  expected: readonly Expected[]
}

/** A load that the controller switches. */
export interface OutputSheet {
  kind: 'output'
  circuit: OutputCircuit
  supply?: { band: Band; basis: readonly BasisWord[] }
  /** By field: limits that are narrower than what a good circuit reads. */
  limits: Readonly<Record<string, { band: Band; basis: readonly BasisWord[] }>>
  basis: readonly BasisWord[]
  expected: readonly Expected[]
}

export interface EncoderSheet {
  kind: 'encoder'
  circuit: EncoderCircuit
  basis: readonly BasisWord[]
  expected: readonly Expected[]
}

/** A flow meter whose pulses are counted. */
export interface FlowSheet {
  kind: 'flow'
  circuit: FlowCircuit
  basis: readonly BasisWord[]
  expected: readonly Expected[]
}

/** A three-phase motor. */
export interface MotorSheet {
  kind: 'motor'
  ratedA?: number
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
export type MeterSheet =
  | SwitchedSheet
  | LoopSheet
  | PlatinumSheet
  | PlainSheet
  | VoltageSheet
  | ThermocoupleSheet
  | ThermistorSheet
  | OutputSheet
  | EncoderSheet
  | FlowSheet
  | MotorSheet

/** Where on the signal path a reading is taken. */
export type Place = 'supply' | 'device' | 'pin' | 'terminal' | 'card' | 'address'

/** `generic`: a usual value of the trade, or one that nobody has held against its source. */
export type BasisWord = 'data sheet' | 'standard' | 'measured' | 'generic'

/** What is read besides the points of the fault table. */
export type FieldName =
  | Point
  | 'supply'
  | 'element'
  | 'leads'
  | 'reference'
  | 'referenceValue'
  | 'value'
  | 'voltage'
  | 'thermovoltage'
  | 'coldJunction'
  | 'couple'
  | 'outputTerminal'
  | 'atLoad'
  | 'loadCurrent'
  | 'coldLoad'
  | 'encoderSupply'
  | 'shaftSpeed'
  | 'channelA'
  | 'channelB'
  | 'counts'
  | 'flowReference'
  | 'flowSupply'
  | 'pulsesAtMeter'
  | 'pulsesAtCard'
  | 'pulsesStopped'
  | 'flowShown'
  | 'shown'
  | 'acrossCard'
  | 'windingUv'
  | 'windingVw'
  | 'windingWu'
  | 'currentU'
  | 'currentV'
  | 'currentW'

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

/** What a field should read. `usual` lies inside the band and is where most good readings are. */
export interface Expectation {
  band: Band
  usual: Band
  unit: string
  basis: readonly BasisWord[]
}

/** What was read, by field, each in its unit. */
export type Values = Readonly<Partial<Record<string, number>>>

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
