import type { Problem, RuleTexts } from '../source/finding.ts'
import { type Located, type Place, partOf } from '../source/place.ts'

/** A cell of a table, as text, whatever file it stands in. */
export interface Cell extends Located<string> {
  /** Why it holds no value that can be used. Reported where the column is read. */
  fault?: CellFault
  /** What a spreadsheet shows for a number, where that differs from its value: `1.10` for 1.1. */
  shown?: string
  /** The cell of a merged range that holds the value; this one is empty. */
  mergedWith?: Located<string>
}

export interface CellFault {
  rule: RuleTexts
  problem: Problem
  /** One cause lies behind all faults of this kind in a table: the first one is reported. */
  once?: true
}

/** One row. `sound` is false when its cells may be cut at the wrong place. */
export interface TableRow {
  cells: readonly Cell[]
  place: Place
  sound: boolean
}

/** A table cut into cells with places: what CSV and workbooks have in common. Rows without any value are left out. */
export interface Rows {
  header: readonly Cell[]
  /** The headings may be cut at the wrong place. */
  headerIsBroken?: true
  records: readonly TableRow[]
  /** The first value of each column beyond the last heading, where such values are no part of their row. */
  beyond: readonly Cell[]
  /** Where a finding stands that is about the whole table. */
  start: Place
  /** How the headings were found, to stand before them: `the columns are read from the first line, split at ;`. */
  columnsFrom: string
  /** What a column is called that has no heading, by its index: `column 3`, `column C`. */
  columnName(index: number): string
  /** What to do about a row with more cells than headings. */
  surplusHelp: string
  /** What to do about headings that are not there, besides adding them. */
  headingHelp: string
}

/** The cell without the spaces round it, and the place of what is left. */
export function trimmed(cell: Cell): Cell {
  const { value, place } = cell
  const text = value.trim()
  if (text.length === value.length) return cell
  const lead = value.length - value.trimStart().length
  return { ...cell, value: text, place: partOf(place, lead, lead + text.length) }
}
