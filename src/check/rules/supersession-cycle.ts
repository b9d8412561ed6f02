import type { Part } from '../../model/machine.ts'
import { comparePlaces } from '../../source/place.ts'
import type { Rule } from '../rule.ts'
import { partsByNumber } from '../successors.ts'

export const supersessionCycle: Rule = {
  id: 'supersession-cycle',
  severity: 'error',
  summary: 'A part is replaced by another one that it replaces itself.',
  why: 'Nobody can tell which of them to order.',
  source: 'house rule',

  *check(machine) {
    const parts = partsByNumber(machine.parts)
    const done = new Set<Part>()
    for (const start of parts.values()) {
      const path: Part[] = []
      let part: Part | undefined = start
      while (part && !done.has(part)) {
        done.add(part)
        path.push(part)
        part = part.supersededBy && parts.get(part.supersededBy.value)
      }
      const from = part ? path.indexOf(part) : -1
      if (from < 0) continue
      const circle = path.slice(from).sort((a, b) => comparePlaces(a.place, b.place))
      const edges = circle.flatMap(({ number, supersededBy }) => (supersededBy ? [{ number, supersededBy }] : []))
      const [first, ...others] = edges
      if (!first) continue
      yield {
        message:
          others.length === 0
            ? `part \`${first.number.value}\` is replaced by itself`
            : `part \`${first.number.value}\` ends up being replaced by itself`,
        place: first.supersededBy.place,
        related: others.map(({ number, supersededBy }) => ({
          label: `\`${number.value}\` is replaced by \`${supersededBy.value}\``,
          place: supersededBy.place,
        })),
        help: 'take out the replacement of the part that can still be ordered',
      }
    }
  },
}
