import type { Drawing, Machine, Sheet, SheetText } from '../model/machine.ts'

/** A text of a sheet that names another sheet: `/12.4`, `Sheet 3`, `from E-102 sheet 1`. */
export interface SheetReference {
  text: SheetText
  drawing: string
  sheet: number
}

/** The word for a sheet in the languages that drawings are lettered in. */
const sheetWord = /(?<!\p{L})(?:sheet|sht?\.|hoja|folio|feuille|blatt|bl\.|foglio)\s*(\d{1,4})(?!\d)/iu
/** Sheet and column, as a conductor that goes on elsewhere has them: `/12.4`. Common practice. */
const slashed = /(?:^|\s)\/(\d{1,4})\.(?:\d{1,2}|[A-Z])(?![\d.])/

/** Prepares the reading of references to sheets. What names its own sheet, or a sheet that is not there, is none. */
export function referenceReader({ drawings }: Pick<Machine, 'drawings'>): (drawing: Drawing, sheet: Sheet) => SheetReference[] {
  const byNumber = new Map(drawings.map((drawing) => [drawing.number.value, drawing]))
  return (drawing, sheet) =>
    sheet.texts.flatMap((text) => {
      const named = namedIn(text.text, byNumber)
      const stated = sheetIn(text.text) ?? named?.sheet
      if (stated === undefined && !named) return []
      const target = named?.drawing ?? drawing
      const number = stated ?? 1
      const isHere = target === drawing && (number === sheet.number || stated === undefined)
      return isHere || !target.sheetList.some((it) => it.number === number) ? [] : [{ text, drawing: target.number.value, sheet: number }]
    })
}

function sheetIn(text: string): number | undefined {
  const found = sheetWord.exec(text) ?? slashed.exec(text)
  return found?.[1] === undefined ? undefined : Number(found[1])
}

/** The first drawing that a text names, with the sheet after a slash: `E-102/2`. */
function namedIn(text: string, byNumber: ReadonlyMap<string, Drawing>): { drawing: Drawing; sheet?: number } | undefined {
  for (const word of text.split(/[\s,;:()]+/)) {
    const whole = byNumber.get(word)
    // A short number alone is more often a pin or a size.
    if (whole && isTelling(word)) return { drawing: whole }
    const [, number = '', sheet] = /^(.+)\/(\d{1,4})(?:\.\w{1,2})?$/.exec(word) ?? []
    const drawing = byNumber.get(number)
    if (drawing && sheet !== undefined && isTelling(number)) return { drawing, sheet: Number(sheet) }
  }
  return undefined
}

const isTelling = (number: string) => number.length >= 3 && /\D/.test(number)
