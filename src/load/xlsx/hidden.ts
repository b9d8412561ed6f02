import { columnLetters } from '../../source/cell.ts'
import { loadRules, type Sink } from '../load-rules.ts'
import type { Cell, TableRow } from '../rows.ts'
import type { RawSheet } from './read-worksheet.ts'

/** Says once what of a table is hidden in its worksheet; it is read like the rest. */
export function noteHidden(sheet: RawSheet, isHidden: boolean, header: readonly Cell[], records: readonly TableRow[], sink: Sink): void {
  const rows = records.filter(({ place }) => sheet.hiddenRows.has(place.line))
  const columns = header.filter(
    ({ value, place }) => value !== '' && sheet.hiddenColumns.some(({ from, to }) => from <= place.column && place.column <= to),
  )
  const said = [
    ...(isHidden ? ['the worksheet'] : []),
    ...listed(
      'row',
      rows.map(({ place }) => place.line),
      String,
    ),
    ...listed(
      'column',
      columns.map(({ place }) => place.column),
      columnLetters,
    ),
  ]
  const place = isHidden ? header[0]?.place : (rows[0]?.cells[0]?.place ?? columns[0]?.place)
  if (!place || said.length === 0) return
  const many = said.length > 1 || rows.length > 1 || columns.length > 1
  sink(loadRules.hiddenCells, {
    message: `${said.join(' and ')} ${many ? 'are' : 'is'} hidden`,
    place,
    note: 'what is hidden was read like the rest',
  })
}

/** Most runs that a note lists. */
const mostRuns = 6

/** `rows 5, 7-9`, as one text in a list, or an empty list. The numbers ascend. */
function listed(noun: string, numbers: readonly number[], name: (number: number) => string): string[] {
  const runs: [number, number][] = []
  for (const number of numbers) {
    const last = runs.at(-1)
    if (last && last[1] === number - 1) last[1] = number
    else runs.push([number, number])
  }
  if (runs.length === 0) return []
  const shown = runs.slice(0, mostRuns).map(([from, to]) => (from === to ? name(from) : `${name(from)}-${name(to)}`))
  const more = runs.length > mostRuns ? ` and ${runs.length - mostRuns} more` : ''
  return [`${noun}${numbers.length > 1 ? 's' : ''} ${shown.join(', ')}${more}`]
}
