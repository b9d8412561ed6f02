import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { advice } from '../suggest.ts'

export const unknownAnchor: Rule = {
  id: 'unknown-anchor',
  severity: 'error',
  summary: 'A link leads to a place inside a page that the page does not have.',
  why: 'The reader lands at the top of the page and does not find what was meant.',
  source: 'house rule',

  *check({ references, pages }) {
    for (const { id, anchor, page } of referencesTo(references, 'page')) {
      if (!anchor || !page) continue
      const target = id === '' ? page.page : pages.find((it) => it.id === id)
      if (!target) continue
      const text = target.translations.get(page.language) ?? target
      if (text.anchors.has(anchor.value)) continue
      yield {
        message: `\`${target.id}\` has no heading or anchor \`${anchor.value}\``,
        place: anchor.place,
        help: advice(anchor.value, text.anchors, 'anchor', 'put `<Anchor id="…" />` where the link should lead, and name that'),
      }
    }
  },
}
