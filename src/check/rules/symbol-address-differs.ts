import { locationKey } from '../../model/controller-address.ts'
import type { ControllerSymbol } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const symbolAddressDiffers: Rule = {
  id: 'symbol-address-differs',
  severity: 'error',
  summary: 'A variable has another address in the controller than in the I/O list.',
  why: 'A technician who follows the I/O list measures at the wrong terminal.',
  source: 'house rule; names as in IEC 61131-3, in upper or lower case',

  *check({ signals, symbols }) {
    if (!symbols) return
    const byName = new Map<string, ControllerSymbol[]>()
    for (const symbol of symbols) {
      const key = symbol.name.value.toUpperCase()
      const same = byName.get(key)
      if (same) same.push(symbol)
      else byName.set(key, [symbol])
    }
    for (const { symbol, address } of signals) {
      const variables = symbol ? (byName.get(symbol.value.toUpperCase()) ?? []) : []
      const [other] = variables
      // Two programs may each have a variable of this name.
      if (!other?.address || variables.some((it) => !it.address || locationKey(it.address.value) === locationKey(address.value))) continue
      yield {
        message: `\`${other.name.value}\` is \`${other.address.value}\` in the controller, and \`${address.value}\` here`,
        place: address.place,
        related: [{ label: 'the variable in the controller', place: other.address.place }],
        help: 'correct the address, or export the variables of the controller again',
      }
    }
  },
}
