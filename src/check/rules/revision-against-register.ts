import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { type TitleValue, titleValues } from '../title-block.ts'

export const revisionAgainstRegister: Rule = {
  id: 'revision-against-register',
  severity: 'warning',
  summary: 'The title block of a sheet has another revision than the drawing register.',
  why: 'The manual names one revision and shows another: the reader may wire from a drawing that no longer holds.',
  source: 'house rule',

  *check({ drawings }) {
    for (const drawing of drawings) {
      for (const [revision, sheets] of otherRevisions(drawing)) {
        const [first, ...others] = sheets
        if (!first) continue
        const { number, revision: registered } = drawing
        yield {
          message: `sheet ${first.sheet.number} of drawing \`${number.value}\` has revision \`${revision}\`, and the register has \`${registered.value}\``,
          place: first.text.place,
          related: [{ label: 'the revision in the register', place: registered.place }],
          ...(others.length > 0
            ? { note: `so ${others.length === 1 ? 'has sheet' : 'have sheets'} ${others.map(({ sheet }) => sheet.number).join(', ')}` }
            : {}),
          help: 'correct the register, or export the sheet in the revision that holds',
        }
      }
    }
  },
}

/** Revisions that differ from the register, each with its sheets. A sheet that names several, as a table of changes does, is not certain. */
function otherRevisions({ sheetList, revision }: Drawing): Map<string, (TitleValue & { sheet: Sheet })[]> {
  const found = sheetList.flatMap((sheet) => {
    const [only, second] = titleValues(sheet, 'revision')
    return only && !second && only.value.toUpperCase() !== revision.value.toUpperCase() ? [{ ...only, sheet }] : []
  })
  return Map.groupBy(found, ({ value }) => value)
}
