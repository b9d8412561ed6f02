import { locationKey } from '../../model/controller-address.ts'
import type { Rule } from '../rule.ts'

export const symbolNotInController: Rule = {
  id: 'symbol-not-in-controller',
  severity: 'warning',
  summary: 'The I/O list names a variable that the controller does not have.',
  why: 'The technician who looks for it in the program does not find it.',
  source: 'house rule; names as in IEC 61131-3, in upper or lower case',

  *check({ signals, symbols }) {
    if (!symbols) return
    // `GVL.Bottom` is a variable of a list that has a name of its own.
    const names = new Set(symbols.flatMap(({ name }) => [name.value.toUpperCase(), name.value.toUpperCase().replace(/^.*\./, '')]))
    const byAddress = new Map(symbols.flatMap((it) => (it.address ? [[locationKey(it.address.value), it] as const] : [])))
    for (const { symbol, address } of signals) {
      const name = symbol?.value.toUpperCase() ?? ''
      // `Lift.Bottom` and `Inputs[3]` are parts of a variable.
      if (!symbol || [name, ...name.split(/[.[]/)].some((part) => names.has(part))) continue
      const there = byAddress.get(locationKey(address.value))
      yield {
        message: `the controller has no variable \`${symbol.value}\``,
        place: symbol.place,
        ...(there ? { related: [{ label: `\`${there.name.value}\` has this address`, place: there.name.place }] } : {}),
        help: there ? 'correct the name of one of them' : 'correct the name, or export the variables of the controller again',
      }
    }
  },
}
