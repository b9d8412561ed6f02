import type { DrawingTexts, PlacedText } from '../../drawing-texts.ts'

/** A text of a drawing that has what was asked for. */
export interface Hit {
  sheet: number
  text: PlacedText
}

/** Every text of a drawing that has the words, in the order of the sheets. Small and large letters and accents are the same; beside digits separators do not count. */
export function findOnSheets(sheets: readonly DrawingTexts[], query: string): Hit[] {
  const asked = folded(query)
  if (asked === '') return []
  const bare = /\d/.test(asked) ? withoutSeparators(asked) : ''
  const has = (text: string) => {
    const read = folded(text)
    return read.includes(asked) || (bare.length > 1 && withoutSeparators(read).includes(bare))
  }
  return sheets.flatMap(({ sheet, texts }) => texts.filter(([text]) => has(text)).map((text): Hit => ({ sheet, text })))
}

const folded = (text: string) =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[\p{Pd}\u2212]/gu, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()

const withoutSeparators = (text: string) => text.replace(/[\s_./:-]/g, '')
