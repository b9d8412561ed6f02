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
  const { thermovoltage: terminalMv, couple, reference, shown } = values
  const { type } = sheet
  const open = couple === undefined ? [] : coupleCauses(couple)
  if (open.length > 0) return { kind: 'value', sign: 'openCouple', unit: '°C', causes: open }
  const terminalC = terminalOf(sheet, values)
  if (terminalC === undefined) return terminalMv === undefined ? nothing : { kind: 'value', sign: 'terminalsMissing', unit: '°C', causes: [] }
  /** What leads from the true temperature to another one that is read. */
  const causesFor = (shownC: number, trueC: number | undefined, readBy: 'card' | 'meter') => {
    const toleranceK = trueC === undefined ? undefined : toleranceOf(sheet, trueC)
    return trueC === undefined || toleranceK === undefined ? [] : thermocoupleCauses({ type, shownC, trueC, terminalC, toleranceK, readBy })
  }
  if (terminalMv === undefined) {
    if (shown === undefined) return nothing
    return { kind: 'value', sign: 'screen', value: shown, unit: '°C', causes: causesFor(shown, reference, 'card'), ...against(shown, reference) }
  }
  const found = thermocouples[type].temperature({ terminalMv, terminalC })
  if (!isComputed(found)) return { kind: 'value', sign: 'noThermovoltage', unit: '°C', causes: thermovoltageCauses(type, terminalMv, terminalC) }
  const ofCouple = causesFor(found.value, reference, 'meter')
  // Where the couple is in order, the screen is held against it.
  const ofCard = ofCouple.length > 0 || shown === undefined ? [] : causesFor(shown, found.value, 'card')
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes: [...ofCouple, ...ofCard], ...against(found.value, reference) }
}

export function thermistorValue({ referenceOhm, referenceC, betaK }: ThermistorSheet, { element, reference }: Values): Outcome {
  if (element === undefined) return nothing
  const causes = thermistorCauses(element, { referenceOhm, referenceC, betaK })
  const found = thermistorTemperature({ thermistorOhm: element, referenceOhm, referenceC, betaK })
  if (causes.length > 0 || !isComputed(found)) return { kind: 'value', sign: 'noTemperature', unit: '°C', causes }
  return { kind: 'value', sign: 'temperature', value: found.value, unit: '°C', causes: [], ...against(found.value, reference) }
}
