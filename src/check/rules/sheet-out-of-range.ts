import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const sheetOutOfRange: Rule = {
  id: 'sheet-out-of-range',
  severity: 'error',
  summary: 'A reference names a sheet that the drawing does not have.',
  why: 'The reader opens the drawing and finds nothing of what was meant.',
  source: 'house rule',
  guards: 'build',

  *check({ references, drawings }) {
    const sheetsOf = new Map(drawings.map(({ number, sheets }) => [number.value, sheets]))
    for (const { id, sheet } of referencesTo(references, 'drawing')) {
      const sheets = sheetsOf.get(id)
      if (!sheets || !sheet || (Number.isInteger(sheet.value) && sheet.value >= 1 && sheet.value <= sheets.value)) continue
      yield {
        message: `drawing \`${id}\` has no sheet ${sheet.value}`,
        place: sheet.place,
        related: [{ label: `it has ${sheets.value === 1 ? '1 sheet' : `${sheets.value} sheets`}, declared here`, place: sheets.place }],
        help: 'correct the sheet, or raise the number of sheets in the register if the drawing has grown',
      }
    }
  },
}
