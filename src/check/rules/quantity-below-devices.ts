import { countsPieces } from '../../model/unit-of-measure.ts'
import type { Rule } from '../rule.ts'
import { inOneRow, numbersOf, placesNamed, type Tagged, taggedByPart } from '../tagged-parts.ts'

export const quantityBelowDevices: Rule = {
  id: 'quantity-below-devices',
  severity: 'warning',
  summary: 'More devices and cards have a part than the bill of materials counts.',
  why: 'A part number or the quantity is wrong, and the wrong part or too few are ordered.',
  source: 'house rule',

  *check({ devices, cards, parts }) {
    const fitted = taggedByPart(devices, cards)
    const isInOneRow = inOneRow(parts)
    for (const { number, quantity, unit, supersededBy } of parts) {
      // Two rows of one number are reported as such, and an old part of which none is fitted where the device names it.
      if (!isInOneRow(number.value) || (quantity.value === 0 && supersededBy)) continue
      if (!countsPieces(unit?.value)) continue
      const named = fitted.get(number.value) ?? []
      const least = leastPieces(named)
      if (least <= quantity.value) continue
      yield {
        message: `the bill of materials counts ${quantity.value} of part \`${number.value}\`, and ${named.length === 1 ? '1 device has' : `${named.length} devices have`} it`,
        place: quantity.place,
        related: placesNamed(named),
        help: 'correct the quantity or the part of a device; write the unit `set` where one part carries several tags',
      }
    }
  },
}

/**
 * The fewest parts that carry these tags. Tags with the same number (`PB053` and its lamp `LT053`) may be one
 * part, and so may two coils of a valve. Common practice.
 */
function leastPieces(named: readonly Tagged[]): number {
  const coils = named.filter(({ technology }) => technology?.value === 'solenoid-valve')
  const others = named.filter((device) => !coils.includes(device))
  return Math.ceil(numbersOf(coils).size / 2) + numbersOf(others).size
}
