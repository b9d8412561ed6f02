import type { Rule } from '../rule.ts'
import { byNumber, successorsOf } from '../successors.ts'
import { unlikeSuccessor } from '../unlike-successor.ts'

export const stockOfSupersededPart: Rule = {
  id: 'stock-of-superseded-part',
  severity: 'warning',
  summary: 'The bill of materials tells to keep a part in stock that another one has replaced.',
  why: 'The store orders a part that can no longer be had, and has none when it is needed.',
  source: 'house rule',

  *check(machine, graph) {
    const parts = byNumber(machine.parts)
    for (const part of machine.parts) {
      const { number, supersededBy, stock } = part
      const latest = supersededBy && successorsOf(part, parts)?.at(-1)
      // A successor that cannot be right is reported as such.
      if (!latest || !stock || stock.value <= 0 || unlikeSuccessor(part, latest, graph)) continue
      yield {
        message: `part \`${number.value}\` is to be kept in stock, and is replaced by \`${latest.number.value}\``,
        place: stock.place,
        related: [{ label: 'what replaces it', place: supersededBy.place }],
        help: `keep \`${latest.number.value}\` instead, or correct what replaces the part`,
      }
    }
  },
}
