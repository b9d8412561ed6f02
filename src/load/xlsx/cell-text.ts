import type { Place } from '../../source/place.ts'
import { loadRules } from '../load-rules.ts'
import type { Cell } from '../rows.ts'
import { numberText } from './number-text.ts'
import type { Workbook } from './open-workbook.ts'
import type { RawCell } from './read-worksheet.ts'

/** A cell as text: codes with all their digits, other numbers plain, dates as ISO 8601, TRUE and FALSE. */
export function cellText({ kind, value, style }: RawCell, { formats, is1904 }: Workbook, place: Place): Cell {
  if (value === undefined) {
    const problem = {
      message: 'the formula was saved without its result',
      place,
      note: 'formulas are not computed here; others of this sheet may lack theirs too',
      help: 'open the workbook in a spreadsheet program and save it again, or put values in place of the formulas',
    }
    return { value: '', place, fault: { rule: loadRules.formulaWithoutValue, problem, once: true } }
  }
  if (kind === 'error') {
    const help = errorHelp[value]
    return {
      value: '',
      place,
      fault: { rule: loadRules.errorCell, problem: { message: `the cell holds the error \`${value}\``, place, ...(help ? { help } : {}) } },
    }
  }
  if (kind === 'boolean') return { value: value === '1' ? 'TRUE' : 'FALSE', place }
  const number = Number(value)
  if (kind !== 'number' || Number.isNaN(number)) return { value, place }
  if (Math.abs(number) >= 1e15) {
    const problem = {
      message: Number.isFinite(number)
        ? `the cell holds a number of ${BigInt(Math.trunc(number)).toString().replace('-', '').length} digits, and a spreadsheet keeps 15 of them`
        : `the cell holds \`${value}\`, which is above every number that a spreadsheet keeps`,
      place,
      help: 'make the cell a text, and type all its digits again',
    }
    return { value: '', place, fault: { rule: loadRules.longNumber, problem } }
  }
  return { ...numberText(number, formats[style] ?? { kind: 'plain' }, is1904), place }
}

/** What the error values of spreadsheets mean. Source: ECMA-376 part 1, 18.17.3. */
const errorHelp: Readonly<Record<string, string>> = {
  '#REF!': 'its formula names a cell that was deleted: write the value itself',
  '#N/A': 'its formula found no match: add what it looks for, or write the value itself',
  '#VALUE!': 'its formula was given a text for a number, or the like: correct the formula, or write the value itself',
  '#DIV/0!': 'its formula divides by zero or by an empty cell: correct the formula, or write the value itself',
  '#NAME?': 'its formula names a function or range that is not known: correct the formula, or write the value itself',
  '#NULL!': 'its formula names two ranges that do not meet: correct the formula, or write the value itself',
  '#NUM!': 'its formula gives a number that cannot be: correct the formula, or write the value itself',
}
