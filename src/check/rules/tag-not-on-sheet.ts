import { checkDesignation, normalise } from '../../model/designation.ts'
import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const tagNotOnSheet: Rule = {
  id: 'tag-not-on-sheet',
  severity: 'warning',
  summary: 'The sheet that a device names does not show its tag.',
  why: 'The reader opens the sheet and cannot find the device.',
  source: 'house rule',

  *check({ devices, drawings, file }) {
    const byNumber = new Map(drawings.map((drawing) => [drawing.number.value, drawing]))
    for (const { tag, drawing, sheet } of devices) {
      const found = drawing && byNumber.get(drawing.value)
      const named = sheet ? found?.sheetList.find(({ number }) => number === sheet.value) : onlySheet(found)
      if (!drawing || !named || named.svg === '' || shows(named, tag.value)) continue
      // A tag that is no tag is reported as such.
      if (checkDesignation(tag.value, file.designation)) continue
      const alike = named.texts.find(({ text }) => normalise(text) === normalise(tag.value))
      yield {
        message: `sheet ${named.number} of drawing \`${drawing.value}\` does not show \`${tag.value}\``,
        place: sheet?.place ?? drawing.place,
        help: alike ? `it stands there as \`${alike.text}\`: write one of them like the other` : whereElse(tag.value, drawings),
      }
    }
  },
}

const onlySheet = (drawing: Drawing | undefined) => (drawing?.sheetList.length === 1 ? drawing.sheetList[0] : undefined)

const shows = ({ texts }: Sheet, tag: string) => texts.some(({ text }) => text === tag)

function whereElse(tag: string, drawings: readonly Drawing[]): string {
  const where = drawings.flatMap(({ number, sheetList }) =>
    sheetList.filter((sheet) => shows(sheet, tag)).map((sheet) => `drawing \`${number.value}\` sheet ${sheet.number}`),
  )
  return where.length > 0 ? `it stands on ${where.slice(0, 3).join(', ')}` : 'no sheet shows the tag as a text of its own'
}
