import type { Basis, Computed, Input, Result, Stated } from '../law/law.ts'
import type { Point } from '../signals/fault/row.ts'
import type { SeenState } from '../signals/fault/seen-state.ts'
import { restsOn as flagsOf } from '../signals/law.ts'
import { isRefused, type RefusalId, type Refused } from '../signals/refusals.ts'
import { dataNames } from './data-names.ts'

/** Where on the way from the device to the controller. */
export type ExpectationPoint = 'device' | 'pin' | 'terminal' | 'card' | 'address'

/**
 * When it should read so. `target` and `none` as in the fault table: a contact is actuated or at rest. `rising` and
 * `falling`: where a switch trips and resets. `range-*`: at a point of the range. `isolated`: without any supply.
 */
export type ExpectationState =
  | 'target'
  | 'none'
  | 'on'
  | 'rising'
  | 'falling'
  | 'range-low'
  | 'range-middle'
  | 'range-high'
  | 'failure-low'
  | 'failure-high'
  | 'in-service'
  | 'isolated'
  | 'always'

/** What is read, with the unit that goes with it. */
export type Measured =
  | 'supply'
  | 'terminal-voltage'
  | 'signal-bit'
  | 'loop-current'
  | 'on-distance'
  | 'off-distance'
  | 'differential-travel'
  | 'switching-rate'
  | 'clear-in-front'
  | 'clear-beside'
  | 'clear-opposite'
  | 'clear-behind'
  | 'clear-around'
  | 'excess-gain'
  | 'object-length'
  | 'switch-pressure'
  | 'switch-temperature'
  | 'switch-level'
  | 'switch-flow'
  | 'analogue-signal'
  | 'head-pressure'
  | 'counts'
  | 'transmitter-voltage'
  | 'element-resistance'
  | 'lead-pair'
  | 'lead-error'
  | 'thermovoltage'
  | 'frequency'
  | 'counts-per-turn'
  | 'coil-resistance'
  | 'warm-coil-resistance'
  | 'load-current'
  | 'output-voltage'
  | 'load-voltage'
  | 'winding-balance'
  | 'synchronous-speed'
  | 'insulation'

export interface RestsOn {
  inputs: readonly Input[]
  bases: readonly Basis[]
  /** A usual value of the trade or of a standard stands in for the data sheet. */
  generic: boolean
  /** Nobody has held a limit in it against its source. */
  fromMemory: boolean
}

/** What one point should read. */
export interface Expectation {
  measured: Measured
  /** Of which signal, where the device has several; as in the I/O list. */
  signal?: string
  point: ExpectationPoint
  /** The point of the fault table that is meant. */
  meter?: Point
  state: ExpectationState
  /** What a reader sees in place of a target or none. */
  seen?: SeenState
  /** What the process stands at. */
  at?: { value: number; unit: string }
  unit: string
  /** A reading passes from `low` to `high`, both included; an end that is absent is open. */
  low?: number
  high?: number
  /** What a device in order reads, where it is narrower than what passes. */
  usual?: { low: number; high: number }
  value?: number
  formula?: string
  restsOn: RestsOn
  /** What checkout.yaml does not give, by its names there; the value, or a limit, is left out for it. */
  notComputed?: readonly string[]
  refused?: RefusalId
  /** Why the values that are given cannot be, and which they are. */
  impossible?: { why: string; of: readonly string[] }
}

export const nothingUsed: RestsOn = { inputs: [], bases: [], generic: false, fromMemory: false }

export function restsOn(inputs: readonly Input[]): RestsOn {
  const bases = [...new Set(inputs.flatMap(({ basis }) => basis ?? []))]
  return { inputs, bases, ...flagsOf({ value: 0, unit: '', formula: '', inputs }) }
}

/** What several numbers rest on together. */
export const together = (...all: readonly RestsOn[]): RestsOn => restsOn([...new Set(all.flatMap(({ inputs }) => inputs))])

/** What limits that are no inputs of a law rest on. */
export const limitsRestOn = (...limits: readonly Stated[]): RestsOn =>
  restsOn(limits.map((limit) => ({ name: 'value', letter: '', unit: '', ...limit })))

type Frame = Omit<Expectation, 'restsOn' | 'unit'> & { unit?: string }
/** The limits of a computed value. */
type Limits = (value: number) => Pick<Expectation, 'low' | 'high' | 'usual'>

/** An expectation of what a law gave, with the limits that follow from its value. */
export function expected(frame: Frame, result: Result | Refused, limits: Limits = () => ({})): Expectation {
  const unit = frame.unit ?? ''
  if (isRefused(result)) return { ...frame, unit, restsOn: nothingUsed, refused: result.refused }
  if ('notComputed' in result) return { ...frame, unit, restsOn: nothingUsed, notComputed: dataNames(result.notComputed) }
  if ('impossible' in result) return { ...frame, unit, restsOn: nothingUsed, impossible: { why: result.impossible, of: dataNames(result.of) } }
  const own = limits(result.value)
  return { ...frame, ...own, unit: result.unit || unit, value: result.value, formula: result.formula, restsOn: restsOn(result.inputs) }
}

/** What is given as it is. */
export const stated = (frame: Frame, ...limits: readonly Stated[]): Expectation => ({
  ...frame,
  unit: frame.unit ?? '',
  restsOn: limitsRestOn(...limits),
})

/** An expectation between two results; what is missing for one of them is missing for both. */
export function between(frame: Frame, low: Result | Refused, high: Result | Refused): Expectation {
  const [first, second] = [expected(frame, low), expected(frame, high)]
  if (first.value === undefined || second.value === undefined) return first.value === undefined ? first : second
  const { value: _, ...rest } = first
  return {
    ...rest,
    low: Math.min(first.value, second.value),
    high: Math.max(first.value, second.value),
    restsOn: together(first.restsOn, second.restsOn),
  }
}

/** A limit of a standard in the place of a data sheet. */
export const generic = (limit: Stated): Stated => ({ ...limit, basis: 'generic' })

/** Whether a reading can be judged by it, or a value is shown. */
export const isComputed = ({ low, high, value }: Expectation): boolean => low !== undefined || high !== undefined || value !== undefined

export const isValue = (result: Result | Refused): result is Computed => 'value' in result
