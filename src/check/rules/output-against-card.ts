import { outputOf } from '../../checkout/circuit-of.ts'
import type { Wired } from '../../checkout/wiring.ts'
import { pairingRefusal, type SensorOutput } from '../../signals/sensor-output.ts'
import type { Problem } from '../../source/finding.ts'
import type { Place } from '../../source/place.ts'
import { checkouts } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

const names: Readonly<Record<SensorOutput, string>> = {
  pnp: 'a PNP output',
  npn: 'an NPN output',
  '2-wire': 'a 2-wire output',
  'dry contact': 'a dry contact',
  namur: 'a NAMUR output',
}

export const outputAgainstCard: Rule = {
  id: 'output-against-card',
  severity: 'error',
  summary: 'The output of a device cannot drive the card that it is wired to.',
  why: 'The input reads the same whatever the device does, and every check on the device itself is good.',
  source: 'IEC 61131-2, current-sinking and current-sourcing inputs',

  *check(_, graph) {
    for (const { wired } of graph.made(checkouts)) {
      for (const it of wired) {
        yield* switched(it)
        yield* analogue(it)
      }
    }
  },
}

function* switched(wired: Wired): Iterable<Problem> {
  const { device, signal, values, ofCard } = wired
  const output = outputOf(wired)
  const sense = ofCard.placedChoice('sense')
  if (!signal || !sense || output === undefined || !/^(DI|SDI|CNT)$/.test(signal.type.value)) return
  if (!pairingRefusal(output, sense.value)) return
  // An amplifier between them reads a NAMUR switch, and its own output drives the card.
  if (output === 'namur' && values.placedText('amplifier')) return
  yield {
    message: `\`${device.tag.value}\` has ${names[output]}, and card \`${signal.card?.value}\` is ${sense.value}`,
    place: signal.card?.place ?? signal.tag.place,
    related: halves(values.placedChoice('output')?.place, sense.place),
    help:
      output === 'namur'
        ? `name the isolating amplifier between them as \`amplifier\` of \`${device.tag.value}\` in checkout.yaml, or fit one`
        : `wire it to a ${sense.value === 'sinking' ? 'sourcing' : 'sinking'} card, fit a device of the other polarity, or correct the data`,
  }
}

function* analogue({ device, signal, values, ofCard }: Wired): Iterable<Problem> {
  const [own, taken] = [values.placedChoice('signal'), ofCard.placedChoice('signal')]
  if (!signal || !own || !taken || own.value === taken.value) return
  yield {
    message: `\`${device.tag.value}\` gives ${own.value}, and card \`${signal.card?.value}\` takes ${taken.value}`,
    place: signal.card?.place ?? signal.tag.place,
    related: halves(own.place, taken.place),
    help: 'set card and device to the same signal, or correct the data',
  }
}

const halves = (device: Place | undefined, card: Place) => [
  ...(device ? [{ label: 'the device', place: device }] : []),
  { label: 'the card', place: card },
]
