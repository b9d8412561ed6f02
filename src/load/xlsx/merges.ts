import type { Range } from './read-worksheet.ts'

/**
 * Which cells of the rows from 1 to `width` columns are the empty part of a merged range: `row:column` -> the range.
 * Ranges do not overlap; one that does is left out, so that the work is no more than the cells.
 */
export function mergedParts(merged: readonly Range[], rows: readonly number[], width: number): Map<string, Range> {
  const parts = new Map<string, Range>()
  for (const range of merged) {
    const right = Math.min(range.right, width)
    for (let index = firstFrom(rows, range.top); index < rows.length; index++) {
      const row = rows[index] ?? 0
      if (row > range.bottom) break
      const left = row === range.top ? range.left + 1 : range.left
      if (left <= right && parts.has(`${row}:${left}`)) break
      for (let column = left; column <= right; column++) parts.set(`${row}:${column}`, range)
    }
  }
  return parts
}

/** The index of the first of the ascending rows that is not before `row`. */
function firstFrom(rows: readonly number[], row: number): number {
  let low = 0
  let high = rows.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((rows[middle] ?? 0) < row) low = middle + 1
    else high = middle
  }
  return low
}
