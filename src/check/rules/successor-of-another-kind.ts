import type { Rule } from '../rule.ts'
import { byNumber } from '../successors.ts'
import { unlikeSuccessor } from '../unlike-successor.ts'

export const successorOfAnotherKind: Rule = {
  id: 'successor-of-another-kind',
  severity: 'warning',
  summary: 'A part is replaced by one that is sold or used as something else.',
  why: 'The number of the successor is probably wrong, and the reader orders what does not fit.',
  source: 'house rule',

  *check(machine, graph) {
    const parts = byNumber(machine.parts)
    for (const part of machine.parts) {
      const { number, supersededBy } = part
      const next = supersededBy && parts.get(supersededBy.value)
      const unlike = next && next !== part ? unlikeSuccessor(part, next, graph) : undefined
      if (!supersededBy || !unlike) continue
      yield {
        message: `part \`${number.value}\` is replaced by \`${supersededBy.value}\`, ${unlike.difference}`,
        place: supersededBy.place,
        related: unlike.related,
        help: 'correct the number of the successor',
      }
    }
  },
}
