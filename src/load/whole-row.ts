import type { Column } from '../model/schema/tables.ts'
import type { Located } from '../source/place.ts'
import { loadRules, type Sink } from './load-rules.ts'
import type { Cell } from './rows.ts'

/** Whether every cell that is read has a value of its own. `reported` holds what was said of earlier rows. */
export function isWhole(
  cells: readonly Cell[],
  positions: ReadonlyMap<string, number>,
  columns: Readonly<Record<string, Column>>,
  reported: Set<string>,
  sink: Sink,
): boolean {
  let whole = true
  for (const [name, index] of positions) {
    const cell = cells[index]
    if (cell?.fault) {
      const { rule, problem, once } = cell.fault
      if (!once || !reported.has(rule.id)) sink(rule, problem)
      if (once) reported.add(rule.id)
      whole = false
    } else if (cell?.mergedWith && (columns[name]?.required || cell.mergedWith.place.line < cell.place.line)) {
      reportMerged(cell, cell.mergedWith, reported, sink)
      whole = false
    }
  }
  return whole
}

/** One finding for a merged range, however many rows it covers. */
function reportMerged({ place }: Cell, first: Located<string>, reported: Set<string>, sink: Sink): void {
  const range = `${loadRules.mergedCells.id} ${first.place.cell}`
  if (reported.has(range)) return
  reported.add(range)
  sink(loadRules.mergedCells, {
    message: 'the cell is merged with another and has no value of its own',
    place,
    related: [{ label: `the value \`${first.value}\` stands here alone`, place: first.place }],
    help: 'take the merge apart, and write the value in each row that it is meant for',
  })
}
