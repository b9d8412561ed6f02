import { checkDesignation, normalise } from '../../model/designation.ts'
import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { sheetClaims } from '../sheet-claims.ts'

export const tagNotOnSheet: Rule = {
  id: 'tag-not-on-sheet',
  severity: 'warning',
  summary: 'The sheet that a device or a page names does not show the tag.',
  why: 'The reader opens the sheet and cannot find the device.',
  source: 'house rule',

  *check(machine) {
    const { drawings, devices, file } = machine
    const byNumber = new Map(drawings.map(({ number, sheetList }) => [number.value, sheetList]))
    const known = new Set(devices.map(({ tag }) => tag.value))
    for (const { tag, drawing, sheet, place } of sheetClaims(machine)) {
      const sheets = byNumber.get(drawing) ?? []
      const named = sheets.length === 1 && sheet === undefined ? sheets[0] : sheets.find(({ number }) => number === sheet)
      if (!named?.readable || shows(named, tag)) continue
      // A tag that is unknown, or no tag, is reported as such.
      if (!known.has(tag) || checkDesignation(tag, file.designation)) continue
      const alike = named.texts.find(({ text }) => normalise(text) === normalise(tag))
      yield {
        message: `sheet ${named.number} of drawing \`${drawing}\` does not show \`${tag}\``,
        place,
        help: alike ? `it stands there as \`${alike.text}\`: write one of them like the other` : whereElse(tag, drawings),
      }
    }
  },
}

const shows = ({ texts }: Sheet, tag: string) => texts.some(({ text }) => text === tag)

function whereElse(tag: string, drawings: readonly Drawing[]): string {
  const where = drawings.flatMap(({ number, sheetList }) =>
    sheetList.filter((sheet) => shows(sheet, tag)).map((sheet) => `drawing \`${number.value}\` sheet ${sheet.number}`),
  )
  return where.length > 0 ? `it stands on ${where.slice(0, 3).join(', ')}` : 'no sheet shows the tag as a text of its own'
}
