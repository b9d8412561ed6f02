import { readAddress } from '../model/controller-address.ts'
import { type Column, signalTypes, type TableName, tables } from '../model/schema/tables.ts'
import { headingWords } from './heading-words.ts'

/** Which of our columns a heading stands for, and how that was seen. */
export interface ColumnGuess {
  column: string
  heading: string
  how: 'our name' | 'its heading' | 'part of its heading' | 'its values'
}

export interface ColumnGuesses {
  guesses: readonly ColumnGuess[]
  /** Columns that the table needs and no heading stands for. */
  missing: readonly string[]
  /** Headings that stand for nothing we read. */
  unread: readonly string[]
}

/** So much of the filled cells must look like what the column holds. */
const certainShare = 0.8

/** Columns that name a thing of another list. */
const naming: Readonly<Record<string, TableName>> = { card: 'cards', part: 'parts', drawing: 'drawings', sheet: 'drawings' }

/**
 * Guesses what the columns of an export are. A heading is used once, and a column filled once; the surest first.
 * A column that names things of a list that is not among `given` is not guessed: all its values would be unknown.
 */
export function guessColumns(
  table: TableName,
  header: readonly string[],
  rows: readonly (readonly string[])[],
  given: readonly TableName[],
): ColumnGuesses {
  const columns: Readonly<Record<string, Column>> = tables[table]
  const words: Readonly<Record<string, readonly string[]>> = headingWords[table]
  const candidates: (ColumnGuess & { score: number; index: number })[] = []
  for (const [index, heading] of header.entries()) {
    const folded = fold(heading)
    if (folded === '') continue
    for (const column of Object.keys(columns)) {
      const list = naming[column]
      if (list && list !== table && !given.includes(list)) continue
      const add = (how: ColumnGuess['how'], score: number) => candidates.push({ column, heading, how, score, index })
      const known = words[column] ?? []
      if (heading === column) add('our name', 1000)
      else if (known.includes(folded)) add('its heading', 900 - known.indexOf(folded))
      else if (known.some((word) => word.length > 2 && ` ${folded} `.includes(` ${word} `))) add('part of its heading', 500 - folded.length)
      const looks = lookOf(table, column)
      const share = looks ? shareOf(rows, index, looks) : 0
      // `Karte` heads the cards, though their names have the form of tags.
      const headsAnother = Object.entries(words).some(([other, its]) => other !== column && its.includes(folded))
      if (share >= certainShare && !headsAnother) add('its values', 300 + 100 * share)
    }
  }
  candidates.sort((a, b) => b.score - a.score || a.index - b.index)
  const guesses = new Map<string, ColumnGuess>()
  const used = new Set<number>()
  for (const { column, heading, how, index } of candidates) {
    if (guesses.has(column) || used.has(index)) continue
    guesses.set(column, { column, heading, how })
    used.add(index)
  }
  return {
    guesses: Object.keys(columns).flatMap((column) => guesses.get(column) ?? []),
    missing: Object.keys(columns).filter((column) => columns[column]?.required && !guesses.has(column)),
    unread: header.filter((heading, index) => heading !== '' && !used.has(index)),
  }
}

function fold(heading: string): string {
  return heading
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

type Look = (cell: string) => boolean

/** Columns whose values tell what they are. */
function lookOf(table: TableName, column: string): Look | undefined {
  if (table === 'signals' && column === 'address') return (cell) => readAddress(cell) !== undefined
  if (table === 'signals' && column === 'type') return (cell) => signalTypes.some((type) => type === cell)
  if ((table === 'signals' || table === 'devices') && column === 'tag')
    return (cell) => /^[=+-]?\p{Lu}{1,4}[\p{Lu}\d.+-]*\d[\p{Lu}\d]*$/u.test(cell) && readAddress(cell) === undefined
  if (table === 'parts' && column === 'quantity') return (cell) => /^\d{1,4}$/.test(cell)
  return undefined
}

function shareOf(rows: readonly (readonly string[])[], index: number, looks: Look): number {
  const filled = rows.flatMap((cells) => (cells[index]?.trim() ? [cells[index].trim()] : []))
  return filled.length === 0 ? 0 : filled.filter(looks).length / filled.length
}
