import type { Rule } from '../rule.ts'

export const tagNotOnSheet: Rule = {
  id: 'tag-not-on-sheet',
  severity: 'warning',
  summary: 'The sheet that a device names does not show its tag.',
  why: 'The reader opens the sheet and cannot find the device.',
  source: 'house rule',

  *check({ devices, drawings }) {
    for (const { tag, drawing, sheet } of devices) {
      const found = drawing && drawings.find(({ number }) => number.value === drawing.value)
      const page = found?.sheetList.find(({ number }) => number === (sheet?.value ?? 1))
      if (!drawing || !page || page.svg === '' || page.texts.some(({ text }) => text === tag.value)) continue
      const where = drawings.flatMap((it) =>
        it.sheetList.filter(({ texts }) => texts.some(({ text }) => text === tag.value)).map(({ number }) => `${it.number.value} sheet ${number}`),
      )
      yield {
        message: `sheet ${page.number} of drawing \`${drawing.value}\` does not show \`${tag.value}\``,
        place: sheet?.place ?? drawing.place,
        help: where.length > 0 ? `it stands on ${where.slice(0, 3).join(', ')}` : 'no sheet shows the tag as a text of its own',
      }
    }
  },
}
