import type { Wired } from '../checkout/wiring.ts'
import type { CheckoutNumber } from '../model/checkout-data.ts'

/** What the controller switches on directly: a coil or a lamp on a digital output. */
export interface DrivenLoad {
  ratedV: CheckoutNumber
  ratedW: CheckoutNumber
  currentA: number
}

/** Undefined for what is on no output, for want of data, and for a coil on a.c.: its power is no measure of its current. */
export function drivenLoad({ signal, values }: Wired): DrivenLoad | undefined {
  const [ratedV, ratedW] = [values.placed('coilV') ?? values.placed('ratedV'), values.placed('coilW') ?? values.placed('ratedW')]
  if (!/^S?DO$/.test(signal?.type.value ?? '') || !ratedV || !ratedW || values.choice('coilFeed') === 'a.c.') return undefined
  return { ratedV, ratedW, currentA: ratedW.value / ratedV.value }
}
