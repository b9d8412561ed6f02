import type { Level } from './level.ts'

/** Whether the target is there; for a contact, whether it is actuated. */
export type TargetState = 'target' | 'none'
export const targetStates: readonly TargetState[] = ['target', 'none']

/**
 * Where the meter is held. `input-at-card`: the terminal to 0 V of the card. `input-to-cabinet`: the same terminal
 * to 0 V of the cabinet. `feed-at-sensor`: the conductor that feeds a 2-wire sensor to the opposite rail.
 */
export type Point =
  | 'input-at-card'
  | 'supply-at-sensor'
  | 'output-at-sensor'
  | 'brown-to-common'
  | 'input-to-cabinet'
  | 'across-sensor'
  | 'feed-at-sensor'
  | 'loop-current'

/** `other-led`: one of another channel of the card. `fault-led`: the line fault of a NAMUR amplifier. */
export type Indicator = 'tag' | 'card-led' | 'output-led' | 'other-led' | 'fault-led'
export type Light = 'lit' | 'dark' | 'unsteady'

/** The stretch of the signal path that is suspected. */
export type Stretch = 'target' | 'supply' | 'device' | 'signal-wire' | 'terminal' | 'card' | 'address'

export type FaultId =
  | 'healthy'
  | 'signal-open'
  | 'l-plus-open'
  | 'l-minus-open'
  | 'signal-shorted-to-l-plus'
  | 'signal-shorted-to-l-minus'
  | 'supply-reversed'
  | 'device-is-npn'
  | 'device-is-pnp'
  | 'contact-inverted'
  | 'never-senses'
  | 'always-senses'
  | 'low-supply'
  | 'card-common-open'
  | 'card-channel-failed'
  | 'tag-stays-off'
  | 'tag-stays-on'
  | 'leakage'
  | 'cores-swapped'
  | 'drop-too-high'
  | 'load-too-small'
  | 'contact-stays-open'
  | 'contact-stays-closed'
  | 'poor-contact'
  | 'line-shorted'
  | 'no-state'
  | 'amplifier-inverted'
  | 'amplifier-without-supply'

/** While the sensor conducts, and while it does not. Undefined where nothing can be foretold. */
export type ByConduction<T> = readonly [conducting: T | undefined, resting: T | undefined]

/** A row of the table before it is known which target state conducts. */
export interface RowSpec {
  id: FaultId
  /** How often it is met, against the other rows. Common practice; 10 for a healthy circuit. */
  weight: number
  suspected?: Stretch
  /** Whether the sensor conducts, where the fault decides that and not the target. */
  conducts?: 'always' | 'never' | 'inverted'
  readings: Partial<Record<Point, ByConduction<Level>>>
  lights: Partial<Record<Indicator, ByConduction<readonly Light[]>>>
}

type ByState<T> = Readonly<Partial<Record<TargetState, T>>>

/** A fault with all that it shows. */
export interface FaultRow {
  id: FaultId
  weight: number
  suspected?: Stretch
  readings: Readonly<Partial<Record<Point, ByState<Level>>>>
  /** Any of the lights that are named can be seen. */
  lights: Readonly<Partial<Record<Indicator, ByState<readonly Light[]>>>>
}
