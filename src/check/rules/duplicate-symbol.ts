import { sameAddress } from '../../model/controller-address.ts'
import type { Signal } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const duplicateSymbol: Rule = {
  id: 'duplicate-symbol',
  severity: 'error',
  summary: 'Signals of two devices have the same variable name in the controller.',
  why: 'The technician who follows the variable watches the other device.',
  source: 'IEC 61131-3: one name, one variable, in upper or lower case',

  *check({ signals }) {
    const first = new Map<string, Signal>()
    for (const signal of signals) {
      const { tag, symbol, address } = signal
      if (!symbol) continue
      const key = symbol.value.toUpperCase()
      const known = first.get(key)
      if (!known) first.set(key, signal)
      // One device may list several signals of one structure. One address twice is reported as such.
      else if (known.tag.value !== tag.value && sameAddress(known.address.value) !== sameAddress(address.value))
        yield {
          message: `\`${tag.value}\` and \`${known.tag.value}\` have the same variable \`${symbol.value}\``,
          place: symbol.place,
          related: [{ label: 'first used here', place: known.symbol?.place ?? known.place }],
          help: 'correct one of the names',
        }
    }
  },
}
