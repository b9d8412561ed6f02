import type { Rule } from '../rule.ts'

export const sheetMissing: Rule = {
  id: 'sheet-missing',
  severity: 'error',
  summary: 'The drawing register has a sheet that has no file.',
  why: 'The reader who opens the sheet finds nothing.',
  source: 'house rule',
  guards: 'build',

  *check({ drawings }) {
    for (const { number, sheets, sheetList } of drawings) {
      const missing = sheetList.filter(({ exists }) => !exists)
      const [first] = missing
      if (!first) continue
      const place = sheets.value === 1 ? number.place : sheets.place
      const pages = sheetList.filter(({ pdf }) => pdf).length
      if (pages > 0) {
        yield {
          message: `drawing \`${number.value}\` has ${sheets.value} sheets, and \`${first.file}\` has ${pages === 1 ? '1 page' : `${pages} pages`}`,
          place,
          help: 'export the whole drawing, or correct the number of sheets',
        }
        continue
      }
      if (missing.length === 1) {
        yield {
          message: `sheet ${first.number} of drawing \`${number.value}\` has no file \`${first.file}\``,
          place,
          help: 'export the sheet to that file, or correct the number of sheets',
        }
        continue
      }
      const listed = missing.slice(0, 3).map(({ file }) => `\`${file}\``)
      const more = missing.length > 3 ? ` and ${missing.length - 3} more` : ''
      yield {
        message: `${missing.length} of ${sheets.value} sheets of drawing \`${number.value}\` have no file`,
        place,
        note: `there is no ${listed.join(', ')}${more}`,
        help: 'export the sheets to these files, or correct the number of sheets',
      }
    }
  },
}
