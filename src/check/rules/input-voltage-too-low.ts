import { wireOhm } from '../../checkout/wiring.ts'
import { keptFromInput } from '../../signals/terminal-voltage.ts'
import { atLeast } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'
import { switchedInputs } from '../switched-inputs.ts'

export const inputVoltageTooLow: Rule = {
  id: 'input-voltage-too-low',
  severity: 'error',
  summary: 'What supply, device and cable leave at an input is less than its card needs.',
  why: 'The input works on a good day, and drops out when the supply is loaded.',
  source: 'IEC 61131-2, 24 V d.c. digital inputs',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { wired, checkout, output, type, limits, cardName } of switchedInputs(graph.made(checkouts))) {
      const { device, signal, values, ofCard, supply } = wired
      const least = supply?.lowestV ?? supply?.nominalV
      const drop = values.placed('dropV')
      // Without a data sheet the most that the standard allows is no value of this device.
      if (!least || (!drop && output !== 'dry contact') || checkout.expectations.some(({ impossible }) => impossible)) continue
      // What is not given counts as nothing, so that only what is sure to fail is found.
      const kept = keptFromInput({
        dropV: drop?.value ?? 0,
        noLoadCurrentMa: values.number('noLoadCurrentMa') ?? 0,
        inputCurrentMa: ofCard.number('inputCurrentMa') ?? 0,
        supplyWireOhm: wireOhm(wired) ?? 0,
        signalWireOhm: wireOhm(wired) ?? 0,
      })
      if (!('value' in kept)) continue
      const left = least.value - kept.value
      const place = drop?.place ?? values.placed('cableLengthM')?.place ?? signal?.tag.place ?? device.tag.place
      if (atLeast(left, limits.onFromV.value) || !isNew(place, type.place, least.place)) continue
      yield {
        message: `\`${device.tag.value}\` and its cable may leave ${figure(Math.max(0, left))} V, and ${cardName} is sure to be on from ${figure(limits.onFromV.value)} V`,
        place,
        related: [
          { label: 'the supply', place: least.place },
          { label: 'the card', place: type.place },
        ],
        note: `of ${figure(least.value)} V the device drops ${figure(drop?.value ?? 0)} V and the cable ${figure(kept.value - (drop?.value ?? 0))} V`,
        help: 'fit a device that drops less, a thicker cable or a card of another type, or correct the data',
      }
    }
  },
}
