import type { Sheet, SheetText } from '../model/machine.ts'

/** A value that a title block gives, and the text that holds it. */
export interface TitleValue {
  value: string
  text: SheetText
}

/** How title blocks name the revision and the sheet. Common practice in English, Spanish and German, from memory. */
const labels = {
  revision: 'rev(?:\\.|ision|isión)?(?: ?no\\.?)?|revisión|rev\\.?-? ?index|änderungs-?index|änd\\.?-? ?index',
  sheet: 'sheet(?: ?no\\.?)?|sht\\.?|hoja(?: ?n\\.?º)?|blatt(?:-?nr\\.?)?',
}

const forms = {
  // A, AB, B2, 3, 03, 1.10
  revision: '[A-Z]{1,2}\\d{0,2}|\\d{1,3}(?:\\.\\d{1,3})*',
  sheet: '\\d{1,3} ?(?:of|de|von|\\/) ?\\d{1,3}',
}

/**
 * What a sheet says of its revision or its number: `Rev. B`, or `B` in the field right of or below a label `Rev.`.
 * Each value once. Several values mean that it is not certain which of them is the title block.
 */
export function titleValues(sheet: Sheet, field: keyof typeof labels): TitleValue[] {
  const label = new RegExp(`^(?:${labels[field]})\\s*:?$`, 'iu')
  const whole = new RegExp(`^(?:${labels[field]})\\s*:?\\s*(${forms[field]})$`, 'iu')
  const value = new RegExp(`^(?:${forms[field]})$`, 'u')
  const border = sheet.texts.some(({ text }) => label.test(text)) ? borderTexts(sheet) : new Set()
  const candidates = sheet.texts.filter((text) => value.test(text.text) && !border.has(text))
  const found = sheet.texts.flatMap((text): TitleValue[] => {
    const alone = whole.exec(text.text)?.[1]
    // Case counts: `Rev. no` is no revision.
    if (alone !== undefined && value.test(alone)) return [{ value: alone, text }]
    return label.test(text.text) ? fieldOf(text, candidates).map((it) => ({ value: it.text, text: it })) : []
  })
  return found.filter(({ value }, index) => found.findIndex((it) => it.value === value) === index)
}

const letterWidthEm = 0.6

/** The nearest text right of a label on its line, and those below it: more than one in the lines of a table. */
function fieldOf(label: SheetText, candidates: readonly SheetText[]): SheetText[] {
  const radians = (label.angleDeg * Math.PI) / 180
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)]
  const em = label.fontSize
  const halfWidth = (label.text.length * letterWidthEm * em) / 2
  const seen = candidates.flatMap((text) => {
    if (Math.abs(text.angleDeg - label.angleDeg) > 1) return []
    const [dx, dy] = [text.x - label.x, text.y - label.y]
    const [along, across] = [dx * cos + dy * sin, dy * cos - dx * sin]
    const width = text.text.length * letterWidthEm * text.fontSize
    return [{ text, across, gap: along - halfWidth - width / 2, left: along - width / 2 + halfWidth, along }]
  })
  const right = seen.filter(({ across, gap }) => Math.abs(across) < 0.5 * em && gap > -0.5 * em && gap < 5 * em).sort((a, b) => a.gap - b.gap)
  const below = seen
    .filter(({ across, left, along }) => across > 0.5 * em && (Math.abs(left) < em || Math.abs(along) < em))
    .sort((a, b) => a.across - b.across)
  const inTable =
    (below[0]?.across ?? 0) > 3 * em
      ? []
      : below.filter(({ across }, index) => below.slice(0, index).every((before, n) => (below[n + 1]?.across ?? across) - before.across < 2.2 * em))
  return [...right.slice(0, 1), ...inTable].map(({ text }) => text)
}

/** Letters and numbers of the grid round the sheet: each stands on two opposite edges, in one row or column. */
function borderTexts({ texts }: Sheet): Set<SheetText> {
  const keysOf = ({ text, x, y, fontSize }: SheetText) => [
    `${text} x ${Math.round((2 * x) / fontSize)}`,
    `${text} y ${Math.round((2 * y) / fontSize)}`,
  ]
  const short = texts.filter(({ text }) => text.length <= 2)
  const counts = new Map<string, number>()
  for (const key of short.flatMap(keysOf)) counts.set(key, (counts.get(key) ?? 0) + 1)
  return new Set(short.filter((text) => keysOf(text).some((key) => (counts.get(key) ?? 0) > 1)))
}
