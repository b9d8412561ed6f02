import type { Graph } from '../../model/graph.ts'
import type { Machine } from '../../model/machine.ts'
import type { Located } from '../../source/place.ts'
import { readingsOf } from '../readings.ts'
import type { Rule } from '../rule.ts'

export const emptyRange: Rule = {
  id: 'empty-range',
  severity: 'error',
  summary: 'The lower end of a range lies above its upper end, or a signal has no range between them.',
  why: 'No reading can be right.',
  source: 'house rule',

  *check(machine, graph) {
    for (const { low, high, what, help } of [...ofSignals(machine), ...onPages(graph)]) {
      yield {
        message: `${what} ends at ${high.value}, and begins at ${low.value}`,
        place: high.place,
        related: [{ label: 'its lower end', place: low.place }],
        help,
      }
    }
  },
}

interface Range {
  low: Located<number>
  high: Located<number>
  what: string
  help: string
}

function ofSignals({ signals }: Machine): Range[] {
  const help = 'put the lower value first; where a signal falls as the value rises, say so in its meaning'
  return signals.flatMap(({ low, high, tag }) =>
    low && high && low.value >= high.value ? [{ low, high, what: `the range of \`${tag.value}\``, help }] : [],
  )
}

/** One good value may be both ends of a reading. A text that is no number is reported as such. */
function onPages(graph: Graph): Range[] {
  return readingsOf(graph).flatMap((reading) => {
    const [low, high] = [reading.get('low'), reading.get('high')]
    if (!low || !high || !(Number(low.value) > Number(high.value))) return []
    const number = ({ value, place }: Located<string>) => ({ value: Number(value), place })
    return [{ low: number(low), high: number(high), what: 'the range of the reading', help: 'put the lower value first' }]
  })
}
