import { sameAddress } from '../../model/controller-address.ts'
import { normalise } from '../../model/designation.ts'
import type { Signal } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const duplicateTerminal: Rule = {
  id: 'duplicate-terminal',
  severity: 'warning',
  summary: 'Signals of two devices are on the same terminal, and not on the same wire number.',
  why: 'The technician measures the signal of another device.',
  source: 'house rule; one terminal, one potential is common practice',

  *check({ signals }) {
    const first = new Map<string, Signal>()
    for (const signal of signals) {
      const { terminal, tag } = signal
      if (!terminal || !namesItsStrip(terminal.value)) continue
      const key = normalise(terminal.value)
      const known = first.get(key)
      if (!known) first.set(key, signal)
      else if (!samePotential(known, signal))
        yield {
          message: `\`${tag.value}\` and \`${known.tag.value}\` are on the same terminal \`${terminal.value}\``,
          place: terminal.place,
          related: [{ label: 'first used here', place: known.terminal?.place ?? known.place }],
          help: 'correct one of the terminals, or write the wire number that both share',
        }
    }
  },
}

/** `X2:14`. A bare `14` may be on any strip, and `A1` is a terminal of the device. */
const namesItsStrip = (terminal: string) => /\p{L}.*[:./-]\w+$/u.test(terminal)

/** One address twice is reported as such. */
function samePotential(a: Signal, b: Signal): boolean {
  if (a.tag.value === b.tag.value || sameAddress(a.address.value) === sameAddress(b.address.value)) return true
  return a.wire !== undefined && a.wire.value === b.wire?.value
}
