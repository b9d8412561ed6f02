import { isComputed, type Result } from '../../law/law.ts'
import { mostCoupleOhm } from '../../signals/fault/thermocouple-causes.ts'
import { signalOfValue } from '../../signals/scaling.ts'
import { thermistorResistance } from '../../signals/thermistor.ts'
import { thermocouples } from '../../signals/thermocouple.ts'
import { thermocoupleTolerance } from '../../signals/thermocouple-class.ts'
import type { Expectation, Field, ThermistorSheet, ThermocoupleSheet, Values, VoltageSheet } from './meter-sheet.ts'

const valueIn = (result: Result): number | undefined => (isComputed(result) ? result.value : undefined)

function between(one: number | undefined, other: number | undefined, unit: string, basis: Expectation['basis']): Expectation | undefined {
  if (one === undefined || other === undefined) return undefined
  const band = { low: Math.min(one, other), high: Math.max(one, other) }
  return { band, usual: band, unit, basis }
}

/** Voltage of a value of the process. */
export function voltageOf({ signalLow, signalHigh, low, high }: VoltageSheet, value: number): number | undefined {
  return valueIn(signalOfValue({ value, signalLow, signalHigh, rangeLow: low, rangeHigh: high }))
}

/** Against the reference where one was read, else the whole range. */
export function voltageExpectation(sheet: VoltageSheet, reference: number | undefined): Expectation | undefined {
  const { signalLow, signalHigh, toleranceV } = sheet
  const wanted = reference === undefined || toleranceV === undefined ? undefined : voltageOf(sheet, reference)
  if (wanted === undefined || toleranceV === undefined) return between(signalLow, signalHigh, 'V', ['standard'])
  return between(wanted - toleranceV, wanted + toleranceV, 'V', ['data sheet'])
}

/** The temperature of the terminals: as measured, else as the data have it. */
export const terminalOf = (sheet: ThermocoupleSheet, { coldJunction }: Values): number | undefined => coldJunction ?? sheet.terminalC

/** Beside the class of the couple, what a reading of its terminals and of the meter may add, in K. Common practice. */
const readingK = 1

/** How far a couple may be off at a temperature, in K; undefined where its class does not say. */
export function toleranceOf({ type, class: name }: ThermocoupleSheet, temperatureC: number): number | undefined {
  const found = name && thermocoupleTolerance({ temperatureC }, type, name)
  return found && 'value' in found ? found.value + readingK : undefined
}

export function thermocoupleExpectation({ name, unit }: Field, sheet: ThermocoupleSheet, values: Values): Expectation | undefined {
  if (name === 'couple') return { band: { low: 0, high: mostCoupleOhm }, usual: { low: 0, high: 100 }, unit, basis: ['generic'] }
  const terminalC = terminalOf(sheet, values)
  if (name === 'shown') return shownExpectation(sheet, values)
  if (name !== 'thermovoltage' || terminalC === undefined) return undefined
  const at = (temperatureC: number) => valueIn(thermocouples[sheet.type].terminalVoltage({ temperatureC, terminalC }))
  const { reference } = values
  const toleranceK = reference === undefined ? undefined : toleranceOf(sheet, reference)
  const basis = values.coldJunction === undefined ? (['standard'] as const) : (['measured', 'standard'] as const)
  if (reference !== undefined && toleranceK !== undefined) return between(at(reference - toleranceK), at(reference + toleranceK), unit, basis)
  return sheet.low === undefined || sheet.high === undefined ? undefined : between(at(sheet.low), at(sheet.high), unit, basis)
}

/** What the screen should show: as the reference, within the class. */
function shownExpectation(sheet: ThermocoupleSheet, { reference }: Values): Expectation | undefined {
  const toleranceK = reference === undefined ? undefined : toleranceOf(sheet, reference)
  if (reference === undefined || toleranceK === undefined) return between(sheet.low, sheet.high, '°C', ['data sheet'])
  return between(reference - toleranceK, reference + toleranceK, '°C', ['standard'])
}

export function thermistorExpectation(
  { referenceOhm, referenceC, betaK, tolerancePercent, low, high }: ThermistorSheet,
  reference: number | undefined,
) {
  const at = (temperatureC: number) => valueIn(thermistorResistance({ temperatureC, referenceOhm, referenceC, betaK }))
  const wanted = reference === undefined ? undefined : at(reference)
  if (wanted !== undefined && tolerancePercent !== undefined) {
    const error = (wanted * tolerancePercent) / 100
    return between(wanted - error, wanted + error, 'Ω', ['data sheet'])
  }
  return low === undefined || high === undefined ? undefined : between(at(low), at(high), 'Ω', ['data sheet'])
}
