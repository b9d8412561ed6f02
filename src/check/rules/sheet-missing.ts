import type { Rule } from '../rule.ts'

export const sheetMissing: Rule = {
  id: 'sheet-missing',
  severity: 'error',
  summary: 'The drawing register has a sheet that has no file.',
  why: 'The reader who opens the sheet finds nothing.',
  source: 'house rule',

  *check({ drawings }) {
    for (const { number, sheets, sheetList } of drawings) {
      for (const sheet of sheetList) {
        if (sheet.exists) continue
        yield {
          message: `sheet ${sheet.number} of drawing \`${number.value}\` has no file \`${sheet.file}\``,
          place: sheets.value === 1 ? number.place : sheets.place,
          help: 'export the sheet to that file, or correct the number of sheets',
        }
      }
    }
  },
}
