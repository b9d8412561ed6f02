import type { Wired } from '../checkout/wiring.ts'
import { isComputed, type Result } from '../law/law.ts'
import { bleederPower, resistorRatingW } from '../signals/input-load.ts'

/** A resistor across an input for a message, `a resistor of 5000 Ω, 0.5 W`: its heat is that at the highest supply. Undefined where it is not computed. */
export function bleederText(largest: Result, { supply }: Wired): string | undefined {
  if (!isComputed(largest) || largest.value <= 0) return undefined
  const ohm = roundedDown(largest.value)
  const heat = bleederPower({ supplyV: (supply?.highestV ?? supply?.nominalV)?.value, bleederOhm: ohm })
  const rating = isComputed(heat) ? resistorRatingW(heat.value) : undefined
  return `a resistor of ${ohm} Ω${rating === undefined ? '' : `, ${rating} W`}`
}

/** Two figures, and never more than the value. */
function roundedDown(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1)
  return Number((Math.floor(value / step) * step).toPrecision(2))
}
