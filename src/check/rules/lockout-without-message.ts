import type { Hazard } from '../../model/hazard.ts'
import type { EnergySource, Page } from '../../model/machine.ts'
import { elementsOf } from '../../model/mdx-elements.ts'
import type { Rule } from '../rule.ts'
import { adviceToWarn, warningPages } from '../warning-pages.ts'

export const lockoutWithoutMessage: Rule = {
  id: 'lockout-without-message',
  severity: 'error',
  summary: 'A lockout cuts off an energy source and shows no message about a hazard that it brings.',
  why: 'Who opens the machine has not been told what can still hurt, and how to avoid it.',
  source: '29 CFR 1910.147(d)(1): the hazards of the energy are known before it is cut off; ANSI Z535.6, in its manner',
  guards: 'people',

  *check(machine, graph) {
    const pagesAbout = warningPages(machine, graph)
    const namesHazards = machine.energy.some(({ hazards }) => hazards.length > 0)
    for (const page of graph.pagesIn('lockout')) {
      if (!namesHazards) {
        if (!showsMessage(page))
          yield {
            message: `lockout \`${page.name}\` shows no safety message`,
            place: page.placeOf(['energy']),
            help: 'write a `<Safety>` or `<Include caution="…" />` about each energy that it cuts off before the first step',
          }
        continue
      }
      for (const [hazard, source] of hazardsOf(graph.sourcesOf(page), (id) => graph.hazard(id))) {
        // Where the hazard names the page as a task of its own, that is reported there.
        if (hazard.tasks.some(({ value }) => value === page.id) || pagesAbout(hazard).has(page.id)) continue
        yield {
          message: `the lockout cuts off \`${source.id.value}\` and shows no message about hazard \`${hazard.id.value}\``,
          place: page.placeOf(['energy', page.frontmatter.energy.indexOf(source.id.value)]),
          related: [{ label: 'the source brings it', place: source.placeOf('hazards') }],
          help: adviceToWarn(hazard),
        }
      }
    }
  },
}

/** Every hazard that the sources bring, with the first one that does. */
function hazardsOf(sources: readonly EnergySource[], hazardOf: (id: string) => Hazard | undefined): Map<Hazard, EnergySource> {
  const found = new Map<Hazard, EnergySource>()
  for (const source of sources)
    for (const { value } of source.hazards) {
      const hazard = hazardOf(value)
      if (hazard && !found.has(hazard)) found.set(hazard, source)
    }
  return found
}

const showsMessage = ({ body }: Page) => elementsOf(body, 'Safety').length > 0 || elementsOf(body, 'Include').length > 0
