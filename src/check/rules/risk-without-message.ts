import type { Rule } from '../rule.ts'
import { adviceToWarn, warningPages } from '../warning-pages.ts'

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
    const isCollected = pages.some(({ elements }) => elements('SafetySummary').length > 0)
    const pagesAbout = warningPages(machine, graph)
    const brought = new Set(
      graph.pagesIn('lockout').flatMap((page) => graph.sourcesOf(page).flatMap(({ hazards }) => hazards.map(({ value }) => value))),
    )
    for (const hazard of hazards) {
      const shown = pagesAbout(hazard)
      for (const { value, place } of hazard.tasks) {
        // A task that this unit does not have, or nobody knows, is reported as such.
        if (graph.page(value) === undefined || shown.has(value)) continue
        yield {
          message: `\`${value}\` shows no message about hazard \`${hazard.id.value}\``,
          place,
          help: adviceToWarn(hazard),
        }
      }
      // What a lockout cuts off must be told there, and is reported there.
      if (hazard.tasks.length > 0 || isCollected || shown.size > 0 || brought.has(hazard.id.value)) continue
      yield {
        message: `no page shows a message about hazard \`${hazard.id.value}\``,
        place: hazard.id.place,
        help: 'write `<SafetySummary />` in the safety chapter, or name the pages of its tasks under `tasks`',
      }
    }
  },
}
