import { isComputed } from '../../law/law.ts'
import { thermistorCauses, voltageCauses } from '../../signals/fault/analogue-causes.ts'
import { coupleCauses, thermocoupleCauses, thermovoltageCauses } from '../../signals/fault/thermocouple-causes.ts'
import { valueOfSignal } from '../../signals/scaling.ts'
import { thermistorTemperature } from '../../signals/thermistor.ts'
import { thermocouples } from '../../signals/thermocouple.ts'
import { terminalOf, toleranceOf, voltageOf } from './expect-measured.ts'
import type { ThermistorSheet, ThermocoupleSheet, Values, VoltageSheet } from './meter-sheet.ts'
import type { Outcome } from './outcome-of.ts'

const nothing: Outcome = { kind: 'nothing' }
const against = (value: number, reference: number | undefined) => (reference === undefined ? {} : { difference: value - reference })

export function voltageValue(sheet: VoltageSheet, { voltage, referenceValue }: Values): Outcome {
  if (voltage === undefined) return nothing
  const { signalLow, signalHigh, low, high, unit, toleranceV } = sheet
  const wantedV = referenceValue === undefined ? undefined : voltageOf(sheet, referenceValue)
  const wanted = wantedV === undefined || toleranceV === undefined ? {} : { wanted: { voltageV: wantedV, toleranceV } }
  const causes = voltageCauses(voltage, { lowV: signalLow, highV: signalHigh, ...wanted })
  const found = valueOfSignal({ signal: voltage, signalLow, signalHigh, rangeLow: low, rangeHigh: high })
  const span = signalHigh - signalLow
  const isOutside = voltage > signalHigh + 0.05 * span || voltage < signalLow - 0.05 * span
  const isZero = signalLow === 0 && Math.abs(voltage) <= 0.02 * span && referenceValue === undefined
  if (isOutside || !isComputed(found)) return { kind: 'value', sign: 'outOfRange', unit, causes }
  return { kind: 'value', sign: isZero ? 'atZero' : 'inRange', value: found.value, unit, causes, ...against(found.value, referenceValue) }
}

export function thermocoupleValue(sheet: ThermocoupleSheet, values: Values): Outcome {
  const { thermovoltage: terminalMv, couple, reference } = values
  const open = couple === undefined ? [] : coupleCauses(couple)
  if (open.length > 0) return { kind: 'value', sign: 'openCouple', unit: '°C', causes: open }
  if (terminalMv === undefined) return nothing
  const terminalC = terminalOf(sheet, values)
  if (terminalC === undefined) return { kind: 'value', sign: 'terminalsMissing', unit: '°C', causes: [] }
  const found = thermocouples[sheet.type].temperature({ terminalMv, terminalC })
  if (!isComputed(found))
    return { kind: 'value', sign: 'noThermovoltage', unit: '°C', causes: thermovoltageCauses(sheet.type, terminalMv, terminalC) }
  const toleranceK = reference === undefined ? undefined : toleranceOf(sheet, reference)
  const causes =
    reference === undefined || toleranceK === undefined
      ? []
      : thermocoupleCauses({ type: sheet.type, shownC: found.value, trueC: reference, terminalC, toleranceK })
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes, ...against(found.value, reference) }
}

export function thermistorValue({ referenceOhm, referenceC, betaK }: ThermistorSheet, { element, reference }: Values): Outcome {
  if (element === undefined) return nothing
  const causes = thermistorCauses(element, { referenceOhm, referenceC, betaK })
  const found = thermistorTemperature({ thermistorOhm: element, referenceOhm, referenceC, betaK })
  if (causes.length > 0 || !isComputed(found)) return { kind: 'value', sign: 'noTemperature', unit: '°C', causes }
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes: [], ...against(found.value, reference) }
}
