import type { Cell } from '../rows.ts'
import type { RawCell, RawSheet } from './read-worksheet.ts'

/** Most of a cell that a report shows, in UTF-16 units: one text may stand in every cell of a large sheet. */
const longest = 40

/** The rows of a worksheet as a report shows them: a line a row from the first, a tab between cells. */
export function sheetText({ rows }: RawSheet, textOf: (raw: RawCell) => Cell): string {
  const lines: string[] = []
  for (const row of [...rows.keys()].sort((a, b) => a - b)) {
    while (lines.length < row - 1) lines.push('')
    const cells: string[] = []
    for (const raw of rows.get(row) ?? []) {
      while (cells.length < raw.column - 1) cells.push('')
      const { value, fault } = textOf(raw)
      cells[raw.column - 1] = onOneLine(fault ? (raw.value ?? '') : value)
    }
    lines.push(cells.join('\t'))
  }
  return lines.join('\n')
}

function onOneLine(text: string): string {
  const cut = text.length > longest ? `${text.slice(0, longest - 1)}…` : text
  return cut.replace(/\p{Cc}/gu, ' ')
}
