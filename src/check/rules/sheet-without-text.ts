import type { Drawing } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { claimedSheet, sheetClaims } from '../sheet-claims.ts'

export const sheetWithoutText: Rule = {
  id: 'sheet-without-text',
  severity: 'warning',
  summary: 'A sheet that should show tags holds no text.',
  why: 'Search and links cannot find a device on it, and nothing on it can be compared with the lists.',
  source: 'house rule',

  *check(machine, graph) {
    const claimed = new Set(sheetClaims(machine).map((claim) => claimedSheet(claim, graph)))
    for (const { number, kind, sheetList } of machine.drawings) {
      const silent = sheetList.filter((sheet) => sheet.readable && sheet.texts.length === 0 && (claimed.has(sheet) || diagrams.has(kind.value)))
      const [first, second] = silent
      if (!first) continue
      yield {
        message: second
          ? `${silent.length} of ${sheetList.length} sheets of drawing \`${number.value}\` hold no text`
          : `sheet ${first.number} of drawing \`${number.value}\` holds no text`,
        place: first.place,
        note: `${second ? `sheets ${listed(silent.map((sheet) => sheet.number))}: ` : ''}which tags stand there was not checked`,
        help: 'export the drawing with its texts as text, and not as lines or a picture',
      }
    }
  },
}

/** Drawings that always show tags. */
const diagrams: ReadonlySet<Drawing['kind']['value']> = new Set(['schematic', 'pneumatic', 'piping'])

function listed(sheets: readonly number[]): string {
  return sheets.length > 5 ? `${sheets.slice(0, 4).join(', ')} and ${sheets.length - 4} more` : sheets.join(', ')
}
