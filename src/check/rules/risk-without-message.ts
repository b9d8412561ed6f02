import type { Graph } from '../../model/graph.ts'
import type { Hazard } from '../../model/hazard.ts'
import type { Machine } from '../../model/machine.ts'
import { elementsOf } from '../../model/mdx-elements.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const riskWithoutMessage: Rule = {
  id: 'risk-without-message',
  severity: 'error',
  summary: 'The pages of a task show no message about a hazard that is met there, or no page does.',
  why: 'The risk assessment counts on the reader being warned.',
  source: 'common practice; ISO 12100, 6.4: the manual tells the risks that are left',
  guards: 'people',

  *check(machine, graph) {
    const { hazards = [], pages } = machine
    if (hazards.length === 0) return
    const isCollected = pages.some(({ body }) => elementsOf(body, 'SafetySummary').length > 0)
    const pagesAbout = warningPages(machine, graph)
    for (const hazard of hazards) {
      const shown = pagesAbout(hazard)
      for (const { value, place } of hazard.tasks) {
        // A task that this unit does not have, or nobody knows, is reported as such.
        if (graph.page(value) === undefined || shown.has(value)) continue
        yield {
          message: `\`${value}\` shows no message about hazard \`${hazard.id.value}\``,
          place,
          help: hazard.caution
            ? `write \`<Include caution="${hazard.caution.value}" />\` there before the first step`
            : `write \`<Safety hazard="${hazard.id.value}" />\` there before the first step`,
        }
      }
      if (hazard.tasks.length > 0 || isCollected || shown.size > 0) continue
      yield {
        message: `no page shows a message about hazard \`${hazard.id.value}\``,
        place: hazard.id.place,
        help: 'write `<SafetySummary />` in the safety chapter, or name the pages of its tasks under `tasks`',
      }
    }
  },
}

/** For a hazard the pages that show a message about it in their source language: their own, or a caution that speaks of it. */
function warningPages({ references }: Machine, graph: Graph): (hazard: Hazard) => Set<string> {
  const naming = Map.groupBy(referencesTo(references, 'hazard'), ({ id }) => id)
  const including = Map.groupBy(referencesTo(references, 'caution'), ({ id }) => id)
  const pagesOf = (list: ReturnType<typeof referencesTo> | undefined) =>
    (list ?? []).flatMap(({ page }) => (page && page.language === page.page.language ? [page.page] : []))
  return ({ id, caution }) => {
    const named = pagesOf(naming.get(id.value))
    const cautions = [...named.filter(({ collection }) => collection === 'cautions').map(({ name }) => name), ...(caution ? [caution.value] : [])]
    const pages = [...named.filter(({ collection }) => collection !== 'cautions'), ...cautions.flatMap((name) => pagesOf(including.get(name)))]
    return new Set(pages.flatMap((page) => graph.page(page.id)?.id ?? []))
  }
}
