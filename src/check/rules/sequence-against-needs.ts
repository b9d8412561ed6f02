import { needsOf } from '../../model/asked-lessons.ts'
import type { Graph } from '../../model/graph.ts'
import type { Rule } from '../rule.ts'

export const sequenceAgainstNeeds: Rule = {
  id: 'sequence-against-needs',
  severity: 'warning',
  summary: 'A sequence has a lesson before one that it needs, or never has that one.',
  why: 'Who teaches in the order of the sequence teaches what cannot be understood yet.',
  source: 'house rule',

  *check({ training }, graph) {
    const taught = new Map<string, Set<string>>()
    for (const [index, { id, role, lessons }] of training.sequences.entries()) {
      const before = taught.get(role) ?? new Set()
      taught.set(role, before)
      for (const [n, name] of lessons.entries()) {
        const lesson = graph.page(`lessons/${name}`)
        const needs = lesson?.collection === 'lessons' ? needsOf(lesson) : []
        for (const need of needs) {
          // What needs itself in a circle is told as that.
          if (before.has(need) || !graph.page(`lessons/${need}`) || leadsTo(need, name, graph)) continue
          const later = lessons.indexOf(need, n)
          yield {
            message:
              later >= 0
                ? `\`${name}\` comes before \`${need}\`, which it needs`
                : `\`${name}\` needs \`${need}\`, which neither \`${id}\` nor a sequence before it has`,
            place: training.placeOf(['sequences', index, 'lessons', n]),
            related: later >= 0 ? [{ label: `\`${need}\` comes here`, place: training.placeOf(['sequences', index, 'lessons', later]) }] : [],
            help: later >= 0 ? `put \`${need}\` before it` : `add \`${need}\` before it`,
          }
        }
        before.add(name)
      }
    }
  },
}

/** Whether a lesson needs another one, or needs what needs it. */
function leadsTo(from: string, to: string, graph: Graph): boolean {
  const seen = new Set([from])
  for (const name of seen) {
    const lesson = graph.page(`lessons/${name}`)
    if (lesson?.collection === 'lessons') for (const need of needsOf(lesson)) seen.add(need)
  }
  return seen.has(to)
}
