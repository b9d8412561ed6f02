import type { Problem } from '../../source/finding.ts'
import { comparePlaces } from '../../source/place.ts'
import type { Rule } from '../rule.ts'
import { byNumber, type Replaceable } from '../successors.ts'

export const supersessionCycle: Rule = {
  id: 'supersession-cycle',
  severity: 'error',
  summary: 'A part or a drawing is replaced by another one that it replaces itself.',
  why: 'Nobody can tell which of them to order or to open.',
  source: 'house rule',

  *check({ parts, drawings }) {
    yield* circlesIn(parts, { noun: 'part', help: 'take out the replacement of the part that can still be ordered' })
    yield* circlesIn(drawings, { noun: 'drawing', help: 'take out the replacement of the drawing that holds' })
  },
}

function* circlesIn(rows: readonly Replaceable[], { noun, help }: { noun: string; help: string }): Iterable<Problem> {
  const all = byNumber(rows)
  const done = new Set<Replaceable>()
  for (const start of all.values()) {
    const path: Replaceable[] = []
    let row: Replaceable | undefined = start
    while (row && !done.has(row)) {
      done.add(row)
      path.push(row)
      row = row.supersededBy && all.get(row.supersededBy.value)
    }
    const from = row ? path.indexOf(row) : -1
    if (from < 0) continue
    const circle = path.slice(from).sort((a, b) => comparePlaces(a.place, b.place))
    const edges = circle.flatMap(({ number, supersededBy }) => (supersededBy ? [{ number, supersededBy }] : []))
    const [first, ...others] = edges
    if (!first) continue
    yield {
      message:
        others.length === 0
          ? `${noun} \`${first.number.value}\` is replaced by itself`
          : `${noun} \`${first.number.value}\` ends up being replaced by itself`,
      place: first.supersededBy.place,
      related: others.map(({ number, supersededBy }) => ({
        label: `\`${number.value}\` is replaced by \`${supersededBy.value}\``,
        place: supersededBy.place,
      })),
      help,
    }
  }
}
