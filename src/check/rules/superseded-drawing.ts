import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { byNumber, successorsOf } from '../successors.ts'

export const supersededDrawing: Rule = {
  id: 'superseded-drawing',
  severity: 'warning',
  summary: 'A page or a list refers to a drawing that another one has replaced.',
  why: 'The reader works from a drawing that no longer shows the machine.',
  source: 'house rule',

  *check({ drawings, references }) {
    const all = byNumber(drawings)
    // The register names the replaced drawings itself.
    const inRegister = new Set(drawings.map(({ supersededBy }) => supersededBy?.place))
    for (const { id, place } of referencesTo(references, 'drawing')) {
      const drawing = all.get(id)
      if (!drawing?.supersededBy || inRegister.has(place)) continue
      const chain = successorsOf(drawing, all)
      const latest = chain?.at(-1)
      if (!chain || !latest) continue
      yield {
        message: `drawing \`${id}\` is replaced by \`${latest.number.value}\``,
        place,
        related: [drawing, ...chain].flatMap(({ number, supersededBy }) =>
          supersededBy ? [{ label: `\`${number.value}\` is replaced by \`${supersededBy.value}\``, place: supersededBy.place }] : [],
        ),
        help: `write \`${latest.number.value}\`, and check its sheet`,
      }
    }
  },
}
