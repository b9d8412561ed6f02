import { writtenSteps } from '../../energy/lockout-of-page.ts'
import { textsOf } from '../../model/machine.ts'
import { namePlace } from '../../model/placed-messages.ts'
import type { Rule } from '../rule.ts'

export const stepBesideLockout: Rule = {
  id: 'step-beside-lockout',
  severity: 'error',
  summary: 'A step of a lockout stands for a point or an energy source that this lockout does not cut off.',
  why: 'The step replaces nothing: the composed one stays, and this one sends people to another point.',
  source: 'house rule',
  guards: 'people',

  *check(machine, graph) {
    const known = { point: new Set(machine.points.map(({ point }) => point.value)), source: new Set(machine.energy.map(({ id }) => id.value)) }
    for (const page of graph.pagesIn('lockout')) {
      // A misspelt source of the head is reported there, and its steps seem to stand for another lockout.
      if (page.frontmatter.energy.some((id) => !known.source.has(id) && !machine.absent.has(`energy:${id}`))) continue
      const sources = graph.sourcesOf(page)
      const points = new Set(sources.flatMap(({ isolation }) => isolation))
      const own = { point: [...points].map(({ point }) => point.value), source: sources.map(({ id }) => id.value) }
      for (const text of textsOf(page)) {
        for (const step of writtenSteps(text.body)) {
          for (const key of ['point', 'source'] as const) {
            const named = step[key]
            // A name that nothing has is reported by its own rule.
            if (named === undefined || own[key].includes(named) || !known[key].has(named)) continue
            yield {
              message: `a step stands for \`${named}\`, which this lockout does not cut off`,
              place: namePlace(step.text, text),
              note: `it cuts off ${own[key].map((id) => `\`${id}\``).join(', ')}`,
              help: `correct \`${key}\`, or take it out`,
            }
          }
        }
      }
    }
  },
}
