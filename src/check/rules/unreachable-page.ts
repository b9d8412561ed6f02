import { partlyRead } from '../partly-read.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unreachablePage: Rule = {
  id: 'unreachable-page',
  severity: 'warning',
  summary: 'The text of a page is shown nowhere.',
  why: 'Every other page stands in a list. A caution is seen only where it is included, and a lesson about a technology only at a device that has it.',
  source: 'house rule',

  *check(machine, graph) {
    if (partlyRead(machine)) return
    const included = new Set(referencesTo(machine.references, 'caution').map(({ id }) => id))
    for (const page of machine.pages) {
      // What is written for every machine need not serve this one.
      if (page.shared) continue
      const place = page.placeOf(['title'])
      if (page.collection === 'cautions' && !included.has(page.name))
        yield {
          message: `no page includes the caution \`${page.name}\``,
          place,
          help: `write \`<Include caution="${page.name}" />\` where it is needed`,
        }
      if (page.collection === 'lessons' && page.frontmatter.technology && graph.devicesOfLesson(page).length === 0)
        yield {
          message: `no fitted device is of the technology of lesson \`${page.name}\``,
          place: page.placeOf(['technology']),
          help: 'correct the technology here or at the device; where it belongs to an option, say so under `fits`',
        }
    }
  },
}
