import type { Rule } from '../rule.ts'

export const sheetWithoutDrawing: Rule = {
  id: 'sheet-without-drawing',
  severity: 'warning',
  summary: 'A row names a sheet and no drawing.',
  why: 'The reader gets no link to the drawing.',
  source: 'house rule',

  *check({ devices, signals, spares, cards }) {
    // The sheet of a signal may be one of the drawing of its device.
    const drawn = new Set(devices.flatMap(({ tag, drawing }) => (drawing ? [tag.value] : [])))
    for (const { drawing, sheet } of [...devices, ...cards, ...[...signals, ...spares].filter(({ tag }) => !drawn.has(tag.value))]) {
      if (!sheet || drawing) continue
      yield {
        message: `the row names sheet ${sheet.value} and no drawing`,
        place: sheet.place,
        help: 'name the drawing, or take the sheet out',
      }
    }
  },
}
