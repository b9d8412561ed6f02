import type { Input, Result } from '../law/law.ts'
import { converted } from '../model/unit-scale.ts'
import { platinumTemperature } from '../signals/platinum.ts'
import { encoderSpeed, flowOfFrequency } from '../signals/pulses.ts'
import { readQuantity } from '../signals/read-quantity.ts'
import { valueOfSignal } from '../signals/scaling.ts'
import { thermistorTemperature } from '../signals/thermistor.ts'
import { thermocouples } from '../signals/thermocouple.ts'
import type { Checkout } from './checkout-of.ts'
import { type Expectation, isValue } from './expectation.ts'
import type { Taken } from './reading.ts'

const measuredBy: Readonly<Partial<Record<Checkout['technology'], Expectation['measured']>>> = {
  pt100: 'element-resistance',
  thermistor: 'element-resistance',
  thermocouple: 'thermovoltage',
}

/**
 * What a reading of a measuring signal stands for, in the unit of its range: `12.1 mA` is 3.04 bar. Undefined for any
 * other reading. `terminalC`: the temperature of the terminals of a thermocouple, where it was measured.
 */
export function meaningOf(
  { quantity, point }: Taken,
  { technology, expectations, thermocouple }: Checkout,
  terminalC?: number,
): { value: number; unit: string } | undefined {
  const pulses = pulsesMean(quantity, technology, expectations)
  if (pulses) return pulses
  const measured = measuredBy[technology] ?? 'analogue-signal'
  const [low, high] = (['range-low', 'range-high'] as const).map((state) => expectations.find((it) => it.measured === measured && it.state === state))
  if (!quantity || !low?.at || !high?.at || low.value === undefined || high.value === undefined) return undefined
  if (point !== undefined && point !== low.point) return undefined
  const read = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, low.unit)
  if ('unread' in read) return undefined
  const given = (name: Input['name']) => low.restsOn.inputs.find((it) => it.name === name)?.value
  const result = ((): Result | undefined => {
    switch (technology) {
      case 'pt100':
        return platinumTemperature({ elementOhm: read.value, iceResistanceOhm: given('iceResistanceOhm') })
      case 'thermistor':
        return thermistorTemperature({
          thermistorOhm: read.value,
          referenceOhm: given('referenceOhm'),
          betaK: given('betaK'),
          referenceC: given('referenceC'),
        })
      case 'thermocouple':
        return thermocouple && thermocouples[thermocouple].temperature({ terminalMv: read.value, terminalC: terminalC ?? given('terminalC') })
      default:
        return valueOfSignal({ signal: read.value, signalLow: low.value, signalHigh: high.value, rangeLow: low.at?.value, rangeHigh: high.at?.value })
    }
  })()
  if (!result || !isValue(result)) return undefined
  const value = technology in measuredBy ? converted(result.value, '°C', low.at.unit) : result.value
  return value === undefined ? undefined : { value, unit: low.at.unit }
}

/** Pulses in Hz as a flow in l/min, or as a speed in min⁻¹. */
function pulsesMean(quantity: Taken['quantity'], technology: Checkout['technology'], expectations: Checkout['expectations']) {
  if (quantity?.dimension !== 'frequency' || (technology !== 'pulse-flow' && technology !== 'encoder')) return undefined
  const inputs = expectations.find(({ measured }) => measured === 'frequency')?.restsOn.inputs
  const given = (name: Input['name']) => inputs?.find((it) => it.name === name)?.value
  const read = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, 'Hz')
  if ('unread' in read) return undefined
  const result =
    technology === 'encoder'
      ? encoderSpeed({ frequencyHz: read.value, pulsesPerTurn: given('pulsesPerTurn') })
      : flowOfFrequency({ frequencyHz: read.value, pulsesPerLitre: given('pulsesPerLitre') })
  return isValue(result) ? { value: result.value, unit: technology === 'encoder' ? 'min⁻¹' : 'l/min' } : undefined
}

/** Whether a reading is the temperature of the terminals of a thermocouple: one in °C at the terminal or the card. */
export const isColdJunction = ({ quantity, point }: Taken, { technology }: Checkout): boolean =>
  technology === 'thermocouple' && quantity?.dimension === 'temperature' && (point === 'terminal' || point === 'card')

/** The temperature of the terminals in °C, where it is among the readings. */
export function coldJunctionIn(all: readonly Taken[], checkout: Checkout): number | undefined {
  const found = all.find((it) => isColdJunction(it, checkout))?.quantity?.typed
  const read = found && readQuantity(`${found.value} ${found.unit}`, '°C')
  return read && 'value' in read ? read.value : undefined
}
