import type { Part } from '../../model/machine.ts'
import { countsPieces } from '../../model/unit-of-measure.ts'
import type { Rule } from '../rule.ts'
import { inOneRow, numbersOf, placesNamed, type Tagged, taggedByPart } from '../tagged-parts.ts'

/** In a bill that counts what is fitted so many rows agree with the tags, and at most one in ten does not. */
const enough = 5

export const quantityAboveDevices: Rule = {
  id: 'quantity-above-devices',
  severity: 'note',
  summary: 'The bill of materials counts more of a part than devices and cards have it, and agrees with the tags elsewhere.',
  why: 'The quantity or the part of a device is wrong, or a device is missing in the list.',
  source: 'house rule; a bill that counts what is fitted is common practice',

  *check({ deviceList, cards, parts, absent }) {
    if (!deviceList) return
    // A card of another unit has a part that is not known here.
    const otherCards = [...absent.keys()].filter((name) => name.startsWith('card:')).length
    const tagged = taggedByPart(deviceList, cards)
    const isInOneRow = inOneRow(parts)
    const compared = parts.flatMap((part) => {
      const named = tagged.get(part.number.value)
      return named && isInOneRow(part.number.value) && countsPieces(part.unit?.value) ? [{ part, named, pieces: piecesOf(named) }] : []
    })
    const above = compared.filter(({ part, named }) => part.quantity.value > named.length + otherCards)
    const agreeing = compared.filter(({ part, named, pieces }) => part.quantity.value <= named.length && part.quantity.value >= pieces)
    if (agreeing.length < enough || above.length > Math.max(1, compared.length / 10)) return
    for (const { part, named } of above) yield problemOf(part, named, agreeing.length)
  },
}

function problemOf({ number, quantity }: Part, named: readonly Tagged[], agreeing: number) {
  const have = named.length === 1 ? 'one device has' : `${named.length} devices have`
  return {
    message: `the bill of materials counts ${quantity.value} of part \`${number.value}\`, and ${have} it`,
    place: quantity.place,
    related: placesNamed(named),
    note: `${agreeing} other parts with tags are counted as their tags are`,
    help: 'correct the quantity or the part of a device, or add the device that is missing in the list',
  }
}

/** The fewest parts that carry these tags: two coils may be one valve, a button and its lamp one part. */
function piecesOf(named: readonly Tagged[]): number {
  const numbers = numbersOf(named).size
  return named.every(({ technology }) => technology?.value === 'solenoid-valve') ? Math.ceil(numbers / 2) : numbers
}
