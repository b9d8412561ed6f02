import { checkDesignation, normalise } from '../../model/designation.ts'
import type { Graph } from '../../model/graph.ts'
import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { claimedSheet, sheetClaims } from '../sheet-claims.ts'

export const tagNotOnSheet: Rule = {
  id: 'tag-not-on-sheet',
  severity: 'warning',
  summary: 'The sheet that a device or a page names does not show the tag.',
  why: 'The reader opens the sheet and cannot find the device.',
  source: 'house rule',

  *check(machine, graph) {
    const { drawings, devices, file } = machine
    const known = new Set(devices.map(({ tag }) => tag.value))
    for (const claim of sheetClaims(machine)) {
      const { tag, drawing, place } = claim
      const named = claimedSheet(claim, graph)
      // A sheet without any text is reported once, and not for each of its tags.
      if (!named?.readable || named.texts.length === 0 || shows(graph, named, tag)) continue
      // A tag that is unknown, or no tag, is reported as such.
      if (!known.has(tag) || checkDesignation(tag, file.designation)) continue
      const alike = named.texts.find(({ text }) => normalise(text) === normalise(tag))
      yield {
        message: `sheet ${named.number} of drawing \`${drawing}\` does not show \`${tag}\``,
        place,
        help: alike ? `it stands there as \`${alike.text}\`: write one of them like the other` : whereElse(tag, drawings, graph),
      }
    }
  },
}

const shows = (graph: Graph, sheet: Sheet, tag: string) => graph.mentionsOn(sheet).some(({ tags }) => tags.includes(tag))

function whereElse(tag: string, drawings: readonly Drawing[], graph: Graph): string {
  const where = drawings.flatMap(({ number, sheetList }) =>
    sheetList.filter((sheet) => shows(graph, sheet, tag)).map((sheet) => `drawing \`${number.value}\` sheet ${sheet.number}`),
  )
  return where.length > 0 ? `it stands on ${where.slice(0, 3).join(', ')}` : 'no sheet shows the tag as a text of its own'
}
