import type { Graph } from '../../model/graph.ts'
import type { Drawing, Machine, Sheet } from '../../model/machine.ts'
import type { SheetMention } from '../../model/sheet-tags.ts'
import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownTagOnDrawing: Rule = {
  id: 'unknown-tag-on-drawing',
  severity: 'warning',
  summary: 'A drawing shows a text with the form of a device tag, and no list has it.',
  why: 'The device is on the machine and not in the manual, or the reader looks for one that was taken away.',
  source: 'house rule',

  *check(machine, graph) {
    const suggest = suggestFrom(namesOf(machine, 'tag'))
    for (const [tag, [first, ...others]] of unknownOnSheets(machine, graph)) {
      if (!first) continue
      const also = [...new Set(others.map(nameOf))].filter((name) => name !== nameOf(first))
      yield {
        message: `${nameOf(first)} shows \`${tag}\`, and no device has this tag`,
        place: first.mention.text.place,
        ...(also.length > 0
          ? { note: `it stands also on ${also.slice(0, 3).join(', ')}${also.length > 3 ? ` and ${also.length - 3} more` : ''}` }
          : {}),
        help: advice(
          suggest(tag),
          'tag',
          'add the device to the list, or take the tag off the drawing',
          'correct the drawing, or add the device to the list',
        ),
      }
    }
  },
}

interface Found {
  drawing: Drawing
  sheet: Sheet
  mention: SheetMention
}

const nameOf = ({ drawing, sheet }: Found) => `sheet ${sheet.number} of drawing \`${drawing.number.value}\``

/** Unknown tags with the sheets that show them. A drawing that is replaced shows the machine as it was. */
function unknownOnSheets({ drawings }: Machine, graph: Graph): Map<string, Found[]> {
  const found = drawings.flatMap((drawing) =>
    drawing.supersededBy
      ? []
      : drawing.sheetList.flatMap((sheet) =>
          graph
            .mentionsOn(sheet)
            .flatMap((mention) => (mention.is === 'unknown' && standsAlone(mention, sheet) ? [{ drawing, sheet, mention }] : [])),
        ),
  )
  return Map.groupBy(found, ({ mention }) => mention.written)
}

/** The whole of a text of the sheet, or a balloon: what stands beside other words may be a cable, a setting or a part of something. */
const standsAlone = ({ text, joined }: SheetMention, { texts }: Sheet) => joined || texts.includes(text)
