import type { Rule } from '../rule.ts'

export const unusedPart: Rule = {
  id: 'unused-part',
  severity: 'note',
  summary: 'A part of which none is fitted is named by nothing else.',
  why: 'The reader finds a part number that belongs to nothing on the machine.',
  source: 'house rule',

  *check({ parts, references }) {
    const named = new Set(references.flatMap(({ kind, id }) => (kind === 'part' ? [id] : [])))
    for (const { number, quantity, supersededBy } of parts) {
      // An old number leads to the part that replaced it. Screws and belts are fitted, and no tag names them.
      if (quantity.value > 0 || supersededBy || named.has(number.value)) continue
      yield {
        message: `none of part \`${number.value}\` is fitted, and nothing names it`,
        place: number.place,
        help: 'correct the quantity, name the part that it may replace under `alternatives`, or take the row out',
      }
    }
  },
}
