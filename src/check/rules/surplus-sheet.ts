import type { Rule } from '../rule.ts'

export const surplusSheet: Rule = {
  id: 'surplus-sheet',
  severity: 'error',
  summary: 'A drawing has more sheets in the folder than in the register.',
  why: 'The manual leaves the sheet out, and the reader does not learn that there is one.',
  source: 'house rule',

  *check({ drawings, absent }) {
    // `E-1.2.svg` is sheet 2 of E-1, or drawing E-1.2.
    const counted = new Set(drawings.flatMap(({ sheetList }) => sheetList.flatMap(({ file, pdf }) => (pdf ? [] : [file]))))
    for (const { number, sheets, surplus } of drawings) {
      const left = surplus.filter(({ file }) => !counted.has(file) && !absent.has(`drawing:${numberIn(file)}`))
      const [first] = left
      if (!first) continue
      yield {
        message: `drawing \`${number.value}\` has ${sheets.value + left.length} sheets, and the register says ${sheets.value}`,
        place: sheets.place,
        related: [{ label: left.length === 1 ? 'the sheet that is left out' : 'the first sheet that is left out', place: first }],
        help: 'correct the number of sheets, or take the sheet away',
      }
    }
  },
}

/** The drawing that a file of this name would be, were it no sheet of another one. */
const numberIn = (file: string) => file.slice(file.lastIndexOf('/') + 1).replace(/\.\w+$/, '')
