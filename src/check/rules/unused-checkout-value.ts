import { technologyOf } from '../../checkout/checkout-of.ts'
import type { CheckoutData } from '../../model/checkout-data.ts'
import type { Machine } from '../../model/machine.ts'
import { checkoutOfTechnology } from '../../model/schema/checkout-values.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const unusedCheckoutValue: Rule = {
  id: 'unused-checkout-value',
  severity: 'warning',
  summary: 'A value of checkout.yaml is used by no device.',
  why: 'Its author believes that it counts, and it changes nothing.',
  source: 'house rule',

  *check(machine) {
    const { checkout } = machine
    if (!checkout) return
    yield* unusedParts(checkout, machine)
    yield* unusedKeys(checkout, machine)
    const used = new Set([...checkout.cards, ...checkout.parts, ...checkout.devices].map(({ texts }) => texts.supply?.value))
    for (const { name } of checkout.supplies) {
      if (!used.has(name.value))
        yield {
          message: `nothing is fed by supply \`${name.value}\``,
          place: name.place,
          help: 'name it as `supply` of a card or a device, or take it out',
        }
    }
  },
}

function* unusedParts(checkout: CheckoutData, { deviceList, cards, parts, absent }: Machine): Iterable<Problem> {
  const numbers = new Set(parts.map(({ number }) => number.value))
  if (deviceList) {
    const fitted = new Set(deviceList.map(({ part }) => part?.value))
    for (const { name } of checkout.parts)
      if (numbers.has(name.value) && !fitted.has(name.value))
        yield {
          message: `no device has part \`${name.value}\``,
          place: name.place,
          help: 'give the part to its devices in the device list, or take its data out',
        }
  }
  // A card may be left out of this unit, and with it the only one of its kind.
  if ([...absent.keys()].some((name) => name.startsWith('card:'))) return
  const ofCards = new Set(cards.flatMap(({ card, part }) => [card.value, part?.value]))
  for (const { name } of checkout.cards)
    if (numbers.has(name.value) && !ofCards.has(name.value))
      yield {
        message: `no card has part \`${name.value}\``,
        place: name.place,
        help: 'give the part to its cards in the list of cards, or take its data out',
      }
}

function* unusedKeys({ devices: entries }: CheckoutData, { devices }: Machine): Iterable<Problem> {
  const byTag = new Map(devices.map((device) => [device.tag.value, device]))
  for (const { name, keys } of entries) {
    const device = byTag.get(name.value)
    if (!device) continue
    const technology = technologyOf(device)
    if (!technology) {
      yield {
        message: `\`${name.value}\` has no technology with anything to measure`,
        place: name.place,
        help: 'give its technology in the device list, or take its data out',
      }
      continue
    }
    const taken: readonly string[] = checkoutOfTechnology[technology]
    for (const { value, place } of keys)
      if (!taken.includes(value))
        yield {
          message: `\`${value}\` means nothing for \`${name.value}\`, which is ${technology}`,
          place,
          help: 'take it out, or correct the technology',
        }
  }
}
