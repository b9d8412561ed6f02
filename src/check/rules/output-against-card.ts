import { outputOf } from '../../checkout/circuit-of.ts'
import type { Wired } from '../../checkout/wiring.ts'
import { pairingRefusal, type SensorOutput } from '../../signals/sensor-output.ts'
import { checkouts } from '../checkouts.ts'
import type { Rule } from '../rule.ts'
import { problemsOfPairs, type WrongPair } from '../wrong-pairs.ts'

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
    const wired = graph.made(checkouts).flatMap((it) => it.wired)
    yield* problemsOfPairs(wired.flatMap((it) => [...switched(it), ...analogue(it)]))
  },
}

function switched(wired: Wired): WrongPair[] {
  const { device, signal, values, ofCard } = wired
  const output = outputOf(wired)
  const sense = ofCard.placedChoice('sense')
  if (!signal || !sense || output === undefined || !/^(DI|SDI|CNT)$/.test(signal.type.value)) return []
  if (!pairingRefusal(output, sense.value)) return []
  // An amplifier between them reads a NAMUR switch, and its own output drives the card.
  if (output === 'namur' && values.placedText('amplifier')) return []
  return [
    {
      tag: device.tag.value,
      card: signal.card?.value ?? '',
      place: signal.card?.place ?? signal.tag.place,
      device: { has: `has ${names[output]}`, several: `come from ${names[output]}`, place: values.placedChoice('output')?.place },
      onCard: { is: `is ${sense.value}`, place: sense.place },
      ...adviceOn(output, sense.value, device.tag.value),
    },
  ]
}

function analogue({ device, signal, values, ofCard }: Wired): WrongPair[] {
  const [own, taken] = [values.placedChoice('signal'), ofCard.placedChoice('signal')]
  if (!signal || !own || !taken || own.value === taken.value) return []
  return [
    {
      tag: device.tag.value,
      card: signal.card?.value ?? '',
      place: signal.card?.place ?? signal.tag.place,
      device: { has: `gives ${own.value}`, several: `are ${own.value}`, place: own.place },
      onCard: { is: `takes ${taken.value}`, place: taken.place },
      help: 'set card and device to the same signal, or correct the data',
      each: 'set cards and devices to the same signal',
    },
  ]
}

function adviceOn(output: SensorOutput, sense: string, tag: string): Pick<WrongPair, 'help' | 'each'> {
  if (output === 'namur')
    return {
      help: `name the isolating amplifier between them as \`amplifier\` of \`${tag}\` in checkout.yaml, or fit one`,
      each: 'name the isolating amplifier of each device as its `amplifier` in checkout.yaml, or fit one',
    }
  const other = sense === 'sinking' ? 'sourcing' : 'sinking'
  return {
    help: `wire it to a ${other} card, fit a device of the other polarity, or correct the data`,
    each: `wire each to a ${other} card, or fit devices of the other polarity`,
  }
}
