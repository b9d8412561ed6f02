import { hasLimits } from '../../checkout/checkout-of.ts'
import { isComputed, type Measured } from '../../checkout/expectation.ts'
import type { CheckoutNumberName, CheckoutTechnology } from '../../model/schema/checkout-values.ts'
import { checkouts, type DeviceCheckout } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const checkoutDataMissing: Rule = {
  id: 'checkout-data-missing',
  severity: 'warning',
  summary: 'A device has a lesson, and nothing says what it should read.',
  why: 'The lesson has no figure to compare a reading with, and cannot name a fault.',
  source: 'house rule',

  *check(machine, graph) {
    // A machine that has not begun with its data has one thing to do, and not one for each device.
    if (!machine.checkout || machine.checkout.parts.length + machine.checkout.devices.length === 0) return
    const taught = graph.made(checkouts).filter(({ device }) => graph.lessonsOf(device).length > 0)
    // What is missing for devices of one part is missing once.
    const alike = Map.groupBy(taught, (it) => [it.device.part?.value ?? it.device.tag.value, ...missingFor(it)].join('\n'))
    for (const [first, ...others] of alike.values()) {
      const missing = first ? missingFor(first) : []
      if (!first || missing.length === 0) continue
      const same = others.slice(0, mostShown).map(({ device }) => `\`${device.tag.value}\``)
      const more = others.length - same.length
      yield {
        message: `what \`${first.device.tag.value}\` should read is not computed: ${missing.map((name) => `\`${name}\``).join(', ')} ${missing.length > 1 ? 'are' : 'is'} missing`,
        place: first.device.tag.place,
        ...(same.length > 0 ? { note: `the same holds for ${same.join(', ')}${more > 0 ? ` and ${more} more of its part` : ''}` } : {}),
        help: `give it in \`${machine.file.data.checkout?.file}\` for its part, its card or its tag; \`low\`, \`high\` and \`contact\` stand in the I/O list`,
      }
    }
  },
}

const mostShown = 3

const mainReading: Readonly<Partial<Record<CheckoutTechnology, Measured>>> = {
  pt100: 'element-resistance',
  thermistor: 'element-resistance',
  thermocouple: 'thermovoltage',
  'current-loop': 'analogue-signal',
  'voltage-signal': 'analogue-signal',
  'pressure-switch': 'switch-pressure',
  'temperature-switch': 'switch-temperature',
}

/** A switch of which nothing is given but its circuit is told by that; one whose set point has begun wants the rest. */
const begins: Readonly<Partial<Record<CheckoutTechnology, readonly CheckoutNumberName[]>>> = {
  'pressure-switch': ['setBar', 'deadBandBar', 'fullScaleBar'],
  'temperature-switch': ['setC', 'deadBandK', 'toleranceK'],
}

/** For the circuit always; for the rest only where nothing at all can be told. */
function missingFor({ checkout, wired }: DeviceCheckout): string[] {
  // A card that does not go with it and a supply that is not there are reported, and the rest hangs on them.
  const isBroken = wired.some(({ values, ofCard, supply }) => !supply && (values.text('supply') ?? ofCard.text('supply')) !== undefined)
  if (isBroken || checkout.circuits.some(({ refused }) => refused)) return []
  const forCircuit = checkout.circuits.flatMap(({ notComputed = [] }) => notComputed)
  // What such a device is there for counts: that its leads can be told is not enough.
  const begun = begins[checkout.technology]
  const isBegun = begun === undefined || wired.some(({ values }) => begun.some((name) => values.number(name) !== undefined))
  const main = isBegun ? mainReading[checkout.technology] : undefined
  const asked = checkout.expectations.filter(({ measured }) => main === undefined || measured === main)
  const isTold = main === undefined ? hasLimits(checkout) : asked.some(isComputed)
  const forRest = isTold ? [] : asked.flatMap(({ notComputed = [] }) => notComputed)
  return [...new Set([...forCircuit, ...forRest])]
}
