import { type ControllerAddress, isInput, readAddress } from '../../model/controller-address.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

/** Signals that are a value and never one bit. Counters and encoders may list a bit of theirs. */
const values: readonly string[] = ['AI', 'AO', 'RTD', 'TC']

export const addressAgainstType: Rule = {
  id: 'address-against-type',
  severity: 'error',
  summary: 'The address of a signal contradicts its type: an output on an input address, a value on one bit.',
  why: 'Type or address is wrong, and the technician looks at the wrong card.',
  source: 'IEC 61131-3, direct representation: I input, Q output; `E` and `A` are common practice',

  *check(machine) {
    for (const { address, type } of ioPoints(machine)) {
      const read = readAddress(address.value)
      if (!read || read.area === 'memory') continue
      const related = [{ label: `the type is \`${type.value}\``, place: type.place }]
      const wanted = isInput(type.value) ? 'input' : 'output'
      // A counter or an encoder is also written to: its preset.
      if (wanted !== read.area && type.value !== 'CNT' && type.value !== 'ENC')
        yield {
          message: `\`${address.value}\` is an ${read.area}, and ${type.value} is an ${wanted}`,
          place: address.place,
          related,
          help: 'correct the address or the type',
        }
      else if (isBit(address.value, read) && values.includes(type.value))
        yield {
          message: `\`${address.value}\` is one bit, and ${type.value} is a value`,
          place: address.place,
          related,
          help: 'name the word that holds the value, or correct the type',
        }
    }
  },
}

/** `%IX0.3` and `I0.3`. In `%I0.3` slot and channel may be meant, whatever is there. */
function isBit(written: string, { form, widthBit }: ControllerAddress): boolean {
  return widthBit === 1 && (form === 'letters' || /^%.X/i.test(written))
}
