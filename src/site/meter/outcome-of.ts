import { numberOf } from '../../law/law.ts'
import { loopCauses, platinumCauses } from '../../signals/fault/analogue-causes.ts'
import type { Cause } from '../../signals/fault/cause.ts'
import { diagnose, type Findings, type Observation } from '../../signals/fault/diagnose.ts'
import { type NextReading, nextReading } from '../../signals/fault/next-reading.ts'
import type { Indicator, Point } from '../../signals/fault/row.ts'
import { type LoopState, loopState } from '../../signals/loop-current.ts'
import { platinumTemperature } from '../../signals/platinum.ts'
import { isRefused, type Refused } from '../../signals/refusals.ts'
import { valueOfSignal } from '../../signals/scaling.ts'
import { fieldsOf } from './fields-of.ts'
import { type Values, withMeasured } from './judge-field.ts'
import { type LightPattern, observationsOf } from './light-pattern.ts'
import type { LoopSheet, MeterSheet, PlatinumSheet } from './meter-sheet.ts'

export type Lights = Readonly<Partial<Record<Indicator, LightPattern>>>

/** What an analogue reading says, with what to do next in the words of `words/meter.ts`. */
export type Sign = 'measuring' | 'saturated' | 'failureLow' | 'failureHigh' | 'betweenStates' | 'temperature' | 'noTemperature'

export interface Value {
  kind: 'value'
  sign: Sign
  /** In `unit`; absent where the reading stands for no value. */
  value?: number
  unit: string
  /** How far it is from the reference that was read, in K. */
  differenceK?: number
  /** What may be wrong, the likeliest first. */
  causes: readonly Cause[]
}

export interface Faults {
  kind: 'faults'
  findings: Findings
  /** The reading that tells a row from the first; in the order of the diagnoses. */
  apart: readonly (NextReading | undefined)[]
}

export type Outcome = { kind: 'nothing' } | Faults | { kind: 'refused'; refused: Refused } | Value

/** What readings and taps lead to. A value is in the unit of its field. */
export function outcomeOf(sheet: MeterSheet, values: Values, lights: Lights): Outcome {
  switch (sheet.kind) {
    case 'switched': {
      const measured = withMeasured(sheet, values)
      if (measured.kind !== 'switched') return { kind: 'nothing' }
      const observations = [...readingsOf(sheet, values), ...tapsOf(lights)]
      if (observations.length === 0) return { kind: 'nothing' }
      const findings = diagnose(observations, measured.circuit)
      if (isRefused(findings)) return { kind: 'refused', refused: findings }
      const [first] = findings.diagnoses
      const apart = findings.diagnoses.map(({ row }) => first && nextReading([first.row, row], observations, measured.circuit))
      return { kind: 'faults', findings, apart }
    }
    case 'loop':
      return values['loop-current'] === undefined ? { kind: 'nothing' } : loopValue(values['loop-current'], sheet)
    case 'platinum':
      return values.element === undefined ? { kind: 'nothing' } : temperature(values.element - (values.leads ?? 0), values.reference, sheet)
    case 'plain':
      return { kind: 'nothing' }
  }
}

function readingsOf(sheet: MeterSheet, values: Values): Observation[] {
  return fieldsOf(sheet).flatMap(({ id, name, state }) => {
    const value = values[id]
    return state && value !== undefined ? [{ state, point: name as Point, value }] : []
  })
}

function tapsOf(lights: Lights): Observation[] {
  const taps = Object.entries(lights) as [Indicator, LightPattern][]
  return taps.flatMap(([indicator, pattern]) => observationsOf(indicator, pattern))
}

const signOfLoop: Readonly<Record<LoopState, Sign>> = {
  'failure low': 'failureLow',
  'saturated low': 'saturated',
  measuring: 'measuring',
  'saturated high': 'saturated',
  'failure high': 'failureHigh',
  'no state': 'betweenStates',
}

function loopValue(currentMa: number, { low, high, unit }: LoopSheet): Outcome {
  const state = loopState(currentMa)
  if (!state) return { kind: 'nothing' }
  const sign = signOfLoop[state]
  const found = valueOfSignal({ signal: currentMa, signalLow: 4, signalHigh: 20, rangeLow: low, rangeHigh: high })
  const measures = sign === 'measuring' || sign === 'saturated'
  return { kind: 'value', sign, unit, causes: loopCauses(currentMa), ...(measures && 'value' in found ? { value: found.value } : {}) }
}

function temperature(ohm: number, referenceC: number | undefined, { iceResistanceOhm }: PlatinumSheet): Value {
  const found = platinumTemperature({ elementOhm: ohm, iceResistanceOhm })
  if (!('value' in found)) return { kind: 'value', sign: 'noTemperature', unit: '°C', causes: platinumCauses(ohm, numberOf(iceResistanceOhm)) }
  const difference = referenceC === undefined ? {} : { differenceK: found.value - referenceC }
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes: [], ...difference }
}
