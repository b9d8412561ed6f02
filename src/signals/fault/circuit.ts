import type { Quantity } from '../../law/law.ts'
import type { InputLimits } from '../digital-input.ts'
import type { NamurLimits } from '../namur.ts'
import type { Card, SensorOutput } from '../sensor-output.ts'

/** `NO`: the signal is on with a target, or while the contact is actuated. */
export type ContactSense = 'NO' | 'NC'

/** A switching sensor on its input. What is missing leaves the readings that need it without a verdict. */
export interface SwitchedCircuit {
  output: SensorOutput
  /** On a NAMUR amplifier: what its output is set to. */
  contact: ContactSense
  card: Card
  /** As measured at the source, in V. */
  supplyV?: Quantity | undefined
  /** The least supply that sensor and card are made for, in V. */
  lowestSupplyV?: Quantity | undefined
  /** The most that the sensor drops, in V. */
  dropV?: Quantity | undefined
  limits?: InputLimits | undefined
  namur?: NamurLimits | undefined
}
