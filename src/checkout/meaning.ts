import { converted } from '../model/unit-scale.ts'
import { platinumTemperature } from '../signals/platinum.ts'
import { readQuantity } from '../signals/read-quantity.ts'
import { valueOfSignal } from '../signals/scaling.ts'
import type { Checkout } from './checkout-of.ts'
import { isValue } from './expectation.ts'
import type { Taken } from './reading.ts'

/** What a reading of a measuring signal stands for, in the unit of its range: `12.1 mA` is 3.04 bar. Undefined for any other reading. */
export function meaningOf({ quantity, point }: Taken, { technology, expectations }: Checkout): { value: number; unit: string } | undefined {
  const measured = technology === 'pt100' ? 'element-resistance' : 'analogue-signal'
  const [low, high] = (['range-low', 'range-high'] as const).map((state) => expectations.find((it) => it.measured === measured && it.state === state))
  if (!quantity || !low?.at || !high?.at || low.value === undefined || high.value === undefined) return undefined
  if (point !== undefined && point !== low.point) return undefined
  const read = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, low.unit)
  if ('unread' in read) return undefined
  const result =
    technology === 'pt100'
      ? platinumTemperature({ elementOhm: read.value, iceResistanceOhm: low.restsOn.inputs.find(({ name }) => name === 'iceResistanceOhm')?.value })
      : valueOfSignal({ signal: read.value, signalLow: low.value, signalHigh: high.value, rangeLow: low.at.value, rangeHigh: high.at.value })
  if (!isValue(result)) return undefined
  const value = technology === 'pt100' ? converted(result.value, '°C', low.at.unit) : result.value
  return value === undefined ? undefined : { value, unit: low.at.unit }
}
