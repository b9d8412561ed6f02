import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const sheetOutOfRange: Rule = {
  id: 'sheet-out-of-range',
  severity: 'error',
  summary: 'A reference names a sheet that the drawing does not have.',
  why: 'The reader opens the drawing and finds nothing of what was meant.',
  source: 'house rule',

  *check({ references, drawings }) {
    for (const { id, sheet } of referencesTo(references, 'drawing')) {
      const drawing = drawings.find(({ number }) => number.value === id)
      if (!drawing || !sheet || (sheet.value >= 1 && sheet.value <= drawing.sheets.value && Number.isInteger(sheet.value))) continue
      const { value: sheets, place } = drawing.sheets
      yield {
        message: `drawing \`${id}\` has no sheet ${sheet.value}`,
        place: sheet.place,
        related: [{ label: `it has ${sheets === 1 ? '1 sheet' : `${sheets} sheets`}, declared here`, place }],
        help: 'correct the sheet, or raise the number of sheets in the register if the drawing has grown',
      }
    }
  },
}
