import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownAnchor: Rule = {
  id: 'unknown-anchor',
  severity: 'error',
  summary: 'A link leads to a place inside a page that the page does not have.',
  why: 'The reader lands at the top of the page and does not find what was meant.',
  source: 'house rule',
  guards: 'build',

  *check({ references, pages }) {
    const byId = new Map(pages.map((page) => [page.id, page]))
    for (const { id, anchor, page } of referencesTo(references, 'page')) {
      if (!anchor || !page) continue
      const target = id === '' ? page.page : byId.get(id)
      if (!target) continue
      const { anchors } = target.translations.get(page.language) ?? target
      if (anchors.has(anchor.value)) continue
      yield {
        message: `\`${target.id}\` has no heading or anchor \`${anchor.value}\``,
        place: anchor.place,
        help: advice(suggestFrom(anchors)(anchor.value), 'anchor', 'put `<Anchor id="…" />` where the link should lead, and name that'),
      }
    }
  },
}
