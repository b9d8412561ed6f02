import { temperatureC } from '../checkout/temperature.ts'
import type { Wired } from '../checkout/wiring.ts'
import { platinumRangeC } from '../signals/platinum.ts'
import { thermocoupleRangeC } from '../signals/thermocouple.ts'
import { within } from '../signals/verdict.ts'
import type { Located } from '../source/place.ts'

interface BeyondElement {
  end: Located<number>
  unit: string
  /** What measures, for a message. */
  name: string
  rangeC: { low: number; high: number }
}

/** The end of the range in the I/O list for which an element is not defined. */
export function beyondElement({ device, signal, values }: Wired): BeyondElement | undefined {
  const unit = signal?.unit?.value
  const element = elementOf(device.technology?.value, values)
  if (!element || unit === undefined) return undefined
  const end = [signal?.low, signal?.high].find((it) => {
    const celsius = it && temperatureC(it.value, unit)
    return celsius !== undefined && !within(celsius, element.rangeC)
  })
  return end && { end, unit, ...element }
}

function elementOf(technology: string | undefined, values: Wired['values']) {
  if (technology === 'pt100') return { name: 'a platinum element', rangeC: platinumRangeC }
  const type = technology === 'thermocouple' ? values.choice('thermocouple') : undefined
  return type && { name: `type ${type}`, rangeC: thermocoupleRangeC(type) }
}
