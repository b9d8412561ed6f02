import { largestBleederForOff, leakageVerdict } from '../../signals/input-load.ts'
import { atMost } from '../../signals/verdict.ts'
import { bleederText } from '../bleeder.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'
import { type SwitchedInput, switchedInputs } from '../switched-inputs.ts'

export const leakageAboveCard: Rule = {
  id: 'leakage-above-card',
  severity: 'warning',
  summary: 'A device that is off leaks more than its card is sure to take for off.',
  why: 'The input may stay on, or flicker, with nothing before the device.',
  source: 'IEC 61131-2, current up to which an input stays off; of Type 1 and Type 2 from memory',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const it of switchedInputs(graph.made(checkouts))) {
      const { wired, type, limits, cardName } = it
      const { device, values, ofCard } = wired
      const leakage = values.placed('leakageMa')
      if (!leakage || leakageVerdict(leakage.value, limits) !== 'fail') continue
      const ohm = ofCard.number('inputResistanceOhm')?.value
      const volts = ohm === undefined ? undefined : (leakage.value * ohm) / 1000
      // An input is off as well where the voltage that the leakage leaves is low enough.
      if ((volts !== undefined && atMost(volts, limits.offToV.value)) || !isNew(leakage.place, type.place)) continue
      const bleeder = ohm === undefined ? undefined : bleederFor(it, leakage.value, ohm)
      yield {
        message: `\`${device.tag.value}\` leaks ${figure(leakage.value)} mA while it is off, and ${cardName} is sure to be off up to ${figure(limits.ignoredMa.value)} mA`,
        place: leakage.place,
        related: [{ label: 'the card', place: type.place }],
        ...(volts === undefined
          ? {}
          : { note: `that leaves ${figure(volts)} V across its ${figure(ohm ?? 0)} Ω, and ${figure(limits.offToV.value)} V is the most for off` }),
        help: `fit a device that leaks less${bleeder ? ',' : ' or'} a card of a type that takes more${bleeder ? `, or ${bleeder}, across the input` : ''}`,
      }
    }
  },
}

function bleederFor({ limits, wired }: SwitchedInput, leakageMa: number, inputOhm: number): string | undefined {
  const offLimitV = limits.offToV.value
  return bleederText(largestBleederForOff({ offLimitV, leakageMa, inputCurrentAtOffMa: (1000 * offLimitV) / inputOhm }), wired)
}
