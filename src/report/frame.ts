import { textKey } from '../source/cell.ts'
import type { Place } from '../source/place.ts'
import { type SourceText, sourceText } from '../source/source-text.ts'
import { type Shown, shownCharacters } from './visible.ts'

/** The author's line with carets under a place; undefined when the text is not at hand. */
export type Frame = (place: Place) => string | undefined

/** Shows places in these texts, by path, or by path and sheet of a workbook: a line a row, a tab between cells. */
export function framesOf(texts: ReadonlyMap<string, string>): Frame {
  const sources = new Map<string, SourceText>()
  return (place) => {
    const key = textKey(place)
    const text = texts.get(key)
    if (text === undefined) return undefined
    const source = sources.get(key) ?? sourceText(place.file, text)
    sources.set(key, source)
    const line = source.line(place.line)
    return frame(line, place.cell === undefined ? place : inRow(line, place))
  }
}

/** A place whose columns count cells, as one whose columns count the characters of the row. */
function inRow(row: string, place: Place): Place {
  const cells = row.split('\t')
  const start = cells.slice(0, place.column - 1).reduce((sum, cell) => sum + cell.length + 1, 1)
  return { ...place, column: start, endColumn: start + cells.slice(place.column - 1, place.endColumn - 1).join('\t').length }
}

/** Most columns of a line that are shown; in a longer line, how many of them may stand before the carets. */
const widest = 100
const widestBefore = 70
/** Columns kept before the carets where the line is cut there. */
const keptBefore = 40

function frame(line: string, place: Place): string {
  const start = Math.min(place.column - 1, line.length)
  const end = place.endLine > place.line ? line.length : Math.min(Math.max(place.endColumn - 1, start), line.length)
  const before = firstOf(line, widest).cut ? lastOf(line.slice(0, start)) : firstOf(line.slice(0, start), widest)
  const marked = firstOf(line.slice(start, end), widest - before.columns)
  const after = marked.cut ? nothing : firstOf(line.slice(end), widest - before.columns - marked.columns)
  const shown = before.text + marked.text + after.text
  const margin = ' '.repeat(String(place.line).length)
  return `${`  ${place.line} | ${shown}`.trimEnd()}\n  ${margin} | ${' '.repeat(before.columns)}${'^'.repeat(Math.max(1, marked.columns))}`
}

/** Only this much of a text is looked at, in UTF-16 units: no line is so full of marks without width that more matters. */
const enough = 4 * widest

interface Piece {
  text: string
  columns: number
  cut: boolean
}

const nothing: Piece = { text: '', columns: 0, cut: false }

/** As much of the end of a text as stands before the carets, with `…` where it is cut. */
function lastOf(text: string): Piece {
  const whole = firstOf(text, widestBefore)
  if (!whole.cut) return whole
  const kept: Shown[] = []
  let columns = 0
  for (const character of shownCharacters(text.slice(-enough)).toReversed()) {
    columns += character.columns
    if (columns > keptBefore) break
    kept.unshift(character)
  }
  while (kept[0]?.columns === 0) kept.shift()
  return { ...joined([ellipsis, ...kept]), cut: true }
}

/** As much of the beginning of a text as fits, with `…` where it is cut. */
function firstOf(text: string, most: number): Piece {
  const kept: Shown[] = []
  let columns = 0
  for (const character of shownCharacters(text.slice(0, enough))) {
    columns += character.columns
    if (columns > most) return { ...joined([...kept, ellipsis]), cut: true }
    kept.push(character)
  }
  return text.length > enough ? { ...joined([...kept, ellipsis]), cut: true } : { ...joined(kept), cut: false }
}

const ellipsis: Shown = { text: '…', columns: 1 }
const widthOf = (characters: readonly Shown[]) => characters.reduce((sum, { columns }) => sum + columns, 0)
const joined = (characters: readonly Shown[]) => ({ text: characters.map(({ text }) => text).join(''), columns: widthOf(characters) })
