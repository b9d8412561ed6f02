import { numberOf } from '../../law/law.ts'
import { loopCauses, platinumCauses } from '../../signals/fault/analogue-causes.ts'
import type { Cause } from '../../signals/fault/cause.ts'
import { diagnose, type Findings, type Observation } from '../../signals/fault/diagnose.ts'
import { encoderRows } from '../../signals/fault/encoder-rows.ts'
import { type FieldFindings, type FieldRow, fieldFindings } from '../../signals/fault/field-rows.ts'
import { flowRows } from '../../signals/fault/flow-rows.ts'
import { type NextReading, nextReading } from '../../signals/fault/next-reading.ts'
import { outputRows } from '../../signals/fault/output-rows.ts'
import type { Indicator, Point } from '../../signals/fault/row.ts'
import { type LoopState, loopState } from '../../signals/loop-current.ts'
import { elementOfThreeWires, platinumTemperature } from '../../signals/platinum.ts'
import { isRefused, type Refused } from '../../signals/refusals.ts'
import { valueOfSignal } from '../../signals/scaling.ts'
import { fieldsOf } from './fields-of.ts'
import { withMeasured } from './judge-field.ts'
import { type LightPattern, observationsOf } from './light-pattern.ts'
import { thermistorValue, thermocoupleValue, voltageValue } from './measured-value.ts'
import type { EncoderSheet, FlowSheet, LoopSheet, MeterSheet, OutputSheet, PlatinumSheet, Values } from './meter-sheet.ts'
import { motorValue } from './motor-value.ts'

export type Lights = Readonly<Partial<Record<Indicator, LightPattern>>>

/** What an analogue reading says, with what to do next in the words of `words/meter.ts`. */
export type Sign =
  | 'measuring'
  | 'saturated'
  | 'failureLow'
  | 'failureHigh'
  | 'betweenStates'
  | 'temperature'
  | 'noTemperature'
  | 'inRange'
  | 'atZero'
  | 'outOfRange'
  | 'openCouple'
  | 'noThermovoltage'
  | 'terminalsMissing'
  | 'screen'
  | 'balanced'
  | 'unbalanced'

export interface Value {
  kind: 'value'
  sign: Sign
  /** In `unit`; absent where the reading stands for no value. */
  value?: number
  unit: string
  /** How far it is from the reference that was read, in its unit; a temperature in K. */
  difference?: number
  /** What may be wrong, the likeliest first. */
  causes: readonly Cause[]
}

export interface Faults {
  kind: 'faults'
  findings: Findings
  /** The reading that tells a row from the first; in the order of the diagnoses. */
  apart: readonly (NextReading | undefined)[]
}

/** Of a load, an encoder or a flow meter. */
export interface Causes {
  kind: 'causes'
  of: 'output' | 'encoder' | 'flow'
  findings: FieldFindings<string>
}

export type Outcome = { kind: 'nothing' } | Faults | { kind: 'refused'; refused: Refused } | Value | Causes

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
    case 'loop': {
      const currentMa = values['loop-current'] ?? currentAcross(values.acrossCard, sheet)
      return currentMa === undefined ? { kind: 'nothing' } : loopValue(currentMa, sheet)
    }
    case 'platinum':
      return values.element === undefined ? { kind: 'nothing' } : temperature(elementOhm(values.element, values.leads), values.reference, sheet)
    case 'voltage':
      return voltageValue(sheet, values)
    case 'thermocouple':
      return thermocoupleValue(sheet, values)
    case 'thermistor':
      return thermistorValue(sheet, values)
    case 'motor':
      return motorValue(sheet, values)
    case 'output':
    case 'encoder':
    case 'flow':
      return causesOf(withMeasured(sheet, values), values, lights)
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

/** The current that makes a voltage across the input of the card. */
function currentAcross(voltageV: number | undefined, { cardOhm }: LoopSheet): number | undefined {
  return voltageV === undefined || !cardOhm ? undefined : (1000 * voltageV) / cardOhm
}

function loopValue(currentMa: number, { low, high, unit }: LoopSheet): Outcome {
  const state = loopState(currentMa)
  if (!state) return { kind: 'nothing' }
  const sign = signOfLoop[state]
  const found = valueOfSignal({ signal: currentMa, signalLow: 4, signalHigh: 20, rangeLow: low, rangeHigh: high })
  const measures = sign === 'measuring' || sign === 'saturated'
  return { kind: 'value', sign, unit, causes: loopCauses(currentMa), ...(measures && 'value' in found ? { value: found.value } : {}) }
}

/** The leads are taken off what is read across the element, where they were read. */
function elementOhm(acrossOhm: number, pairOhm: number | undefined): number {
  const found = elementOfThreeWires({ acrossOhm, pairOhm })
  return 'value' in found ? found.value : acrossOhm
}

function temperature(ohm: number, referenceC: number | undefined, { iceResistanceOhm }: PlatinumSheet): Value {
  const found = platinumTemperature({ elementOhm: ohm, iceResistanceOhm })
  if (!('value' in found)) return { kind: 'value', sign: 'noTemperature', unit: '°C', causes: platinumCauses(ohm, numberOf(iceResistanceOhm)) }
  const difference = referenceC === undefined ? {} : { difference: found.value - referenceC }
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes: [], ...difference }
}

/** What the lights of an output say, as its fault rows read them. */
const asFields: Readonly<Partial<Record<LightPattern, readonly [on: number, off: number]>>> = { with: [1, 0], never: [0, 0], always: [1, 1] }

function causesOf(sheet: MeterSheet, values: Values, lights: Lights): Outcome {
  if (sheet.kind !== 'output' && sheet.kind !== 'encoder' && sheet.kind !== 'flow') return { kind: 'nothing' }
  const [tag, led] = [lights.tag && asFields[lights.tag], lights['card-led'] && asFields[lights['card-led']]]
  const seen: Values = { ...(tag ? { 'tag.on': tag[0] } : {}), ...(led ? { 'led.on': led[0], 'led.off': led[1] } : {}) }
  const known = sheet.kind === 'encoder' ? ['supply', 'channelA', 'channelB', 'counts'] : fieldsOf(sheet).map(({ id }) => id)
  const read: Record<string, number> = {}
  for (const id of known) {
    const value = values[id]
    if (value !== undefined) read[id] = value
  }
  const all = { ...read, ...seen }
  const findings: FieldFindings<string> | undefined = fieldFindings<string>(rowsOf(sheet), all)
  return findings ? { kind: 'causes', of: sheet.kind, findings } : { kind: 'nothing' }
}

/** The fault rows of what is read by fields, for the circuit of a sheet. */
export function rowsOf(sheet: OutputSheet | EncoderSheet | FlowSheet): readonly FieldRow<string>[] {
  if (sheet.kind === 'output') return outputRows(sheet.circuit)
  return sheet.kind === 'encoder' ? encoderRows(sheet.circuit) : flowRows(sheet.circuit)
}
