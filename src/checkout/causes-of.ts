import { loopCauses, voltageCauses } from '../signals/fault/analogue-causes.ts'
import type { Cause } from '../signals/fault/cause.ts'
import { fieldFindings } from '../signals/fault/field-rows.ts'
import { type OutputField, outputRows } from '../signals/fault/output-rows.ts'
import { readQuantity } from '../signals/read-quantity.ts'
import type { Checkout } from './checkout-of.ts'
import type { Taken } from './reading.ts'

/** What may be wrong with a load or a measuring signal, the likeliest first; undefined where no reading is of one. */
export function causesOf(all: readonly Taken[], checkout: Checkout): { fits: boolean; healthy: boolean; causes: readonly Cause[] } | undefined {
  const [output, ...others] = checkout.outputs
  if (output && others.length === 0 && checkout.circuits.length === 0) {
    const found = fieldFindings(outputRows(output.circuit), Object.fromEntries(all.flatMap(fieldsOf)))
    return found && { fits: found.fits, healthy: found.healthy, causes: found.causes }
  }
  const causes = all.flatMap((it) => signalCauses(it, checkout))
  return causes.length > 0 ? { fits: true, healthy: false, causes } : undefined
}

function fieldsOf({ point, state, quantity, light }: Taken): [OutputField, number][] {
  if (light) return point === 'tag' || point === 'card-led' ? [[point === 'tag' ? 'tag.on' : 'led.on', light === 'lit' ? 1 : 0]] : []
  if (!quantity) return []
  const { value, unit } = quantity.typed
  const as = (wanted: string) => {
    const read = readQuantity(`${value} ${unit}`, wanted)
    return 'value' in read ? read.value : Number.NaN
  }
  if (quantity.dimension === 'resistance') return [['cold', as('Ω')]]
  if (quantity.dimension === 'current') return [['current', as('mA')]]
  if (quantity.dimension !== 'voltage' || state !== 'on') return []
  return [[point === 'terminal' || point === 'card' ? 'terminal.on' : 'load.on', as('V')]]
}

function signalCauses({ point, quantity }: Taken, { technology, expectations }: Checkout): Cause[] {
  const [low, high] = (['range-low', 'range-high'] as const).map((state) =>
    expectations.find((it) => it.measured === 'analogue-signal' && it.state === state),
  )
  if (!quantity || low?.value === undefined || high?.value === undefined || (point !== undefined && point !== low.point)) return []
  const read = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, low.unit)
  if ('unread' in read) return []
  if (technology === 'current-loop') return low.value === 4 && high.value === 20 ? loopCauses(read.value) : []
  return low.unit === 'V' ? voltageCauses(read.value, { lowV: low.value, highV: high.value }) : []
}
