import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { type TitleValue, titleValues } from '../title-block.ts'

export const wrongSheetNumber: Rule = {
  id: 'wrong-sheet-number',
  severity: 'warning',
  summary: 'The title block of a sheet has another sheet number than its file or page.',
  why: 'A reference to a sheet opens another one.',
  source: 'house rule',

  *check({ drawings }) {
    const throughout = totalsOfASet(drawings)
    for (const drawing of drawings) {
      const numbered = drawing.sheetList.flatMap(numberOn).filter(({ own, of }) => own <= drawing.sheets.value && !throughout.has(of))
      const wrong = numbered.filter(({ sheet, own }) => own !== sheet.number)
      const name = `drawing \`${drawing.number.value}\``
      if (wrong[0]) {
        const [{ sheet, own, text }, ...others] = wrong as [NumberedSheet, ...NumberedSheet[]]
        const more = others.slice(0, 3).map((it) => `sheet ${it.sheet.number} says ${it.own}`)
        yield {
          message: `sheet ${sheet.number} of ${name} says that it is sheet ${own}`,
          place: text.place,
          ...(more.length > 0 ? { note: more.join(', ') + (others.length > 3 ? ` and ${others.length - 3} more` : '') } : {}),
          help: 'put the sheets in the order of their numbers, or correct the title block',
        }
        continue
      }
      const { sheets } = drawing
      const miscounted = isWhole(drawing) ? numbered.filter(({ of }) => of !== sheets.value) : []
      const [first] = miscounted
      if (!first) continue
      yield {
        message: `sheet ${first.sheet.number} of ${name} says that there are ${first.of} sheets, and the register has ${sheets.value}`,
        place: first.text.place,
        related: [{ label: 'the number in the register', place: sheets.place }],
        ...(miscounted.length > 1 ? { note: `${miscounted.length} sheets say another number than the register` } : {}),
        help: 'export the sheets that are missing, or correct the title block',
      }
    }
  },
}

interface NumberedSheet extends TitleValue {
  sheet: Sheet
  own: number
  of: number
}

/** Empty where the sheet says nothing, or more than one thing. */
function numberOn(sheet: Sheet): NumberedSheet[] {
  const [only, second] = titleValues(sheet, 'sheet')
  const [own, of] = only?.value.match(/\d+/g)?.map(Number) ?? []
  return only && !second && own !== undefined && of !== undefined ? [{ ...only, sheet, own, of }] : []
}

/** Totals that several drawings name and none of them has: their sheets are numbered through the whole set. */
function totalsOfASet(drawings: readonly Drawing[]): Set<number> {
  const foreign = drawings.flatMap(({ sheetList, sheets }) =>
    [...new Set(sheetList.flatMap(numberOn).map(({ of }) => of))].filter((of) => of !== sheets.value),
  )
  return new Set(foreign.filter((of, index) => foreign.indexOf(of) !== index))
}

/** Sheets that are missing or left over are reported as such. */
const isWhole = ({ sheetList, surplus }: Drawing) => surplus.length === 0 && sheetList.every(({ exists }) => exists)
