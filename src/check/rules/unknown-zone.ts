import { zoneGridOf } from '../../model/zone-grid.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownZone: Rule = {
  id: 'unknown-zone',
  severity: 'error',
  summary: 'A page or a list names a zone that the drawing sheet does not have.',
  why: 'The reader looks for a field of the sheet that is not there.',
  source: 'house rule; zones of a sheet: ISO 5457 and ASME Y14.1, from memory',

  *check({ references, drawings }) {
    const byNumber = new Map(drawings.map((drawing) => [drawing.number.value, drawing]))
    for (const { id, sheet, zone } of referencesTo(references, 'drawing')) {
      if (!zone) continue
      const { value, place } = zone
      if (!/^[A-Z]?[1-9]\d?$/.test(value)) {
        yield { message: value.trim() === '' ? 'the zone is empty' : `\`${value}\` is no zone`, place, help: advice(value) }
        continue
      }
      const drawing = byNumber.get(id)
      // An unknown drawing and a sheet that it does not have are reported as such.
      if (!drawing) continue
      if (!sheet && drawing.sheets.value > 1) {
        yield {
          message: `zone \`${value}\` is named without a sheet`,
          place,
          related: [{ label: `drawing \`${id}\` has ${drawing.sheets.value} sheets`, place: drawing.sheets.place }],
          help: 'write `sheet="…"` too',
        }
        continue
      }
      const named = drawing.sheetList.find(({ number }) => number === (sheet?.value ?? 1))
      const grid = named?.readable ? zoneGridOf(named) : undefined
      if (!named || !grid || grid.field(value)) continue
      yield {
        message: `sheet ${named.number} of drawing \`${id}\` has no ${/^\d/.test(value) ? 'column' : 'zone'} \`${value}\``,
        place,
        note: `its letters are ${range(grid.letters)}, its numbers ${range(grid.numbers)}`,
        help: 'look at the border of the sheet and correct the zone',
      }
    }
  },
}

const range = (names: readonly string[]) => {
  const sorted = names.toSorted((a, b) => a.length - b.length || (a < b ? -1 : 1))
  return `${sorted[0]} to ${sorted.at(-1)}`
}

function advice(value: string): string {
  const upper = value.toUpperCase().replace(/[\s./-]/g, '')
  const turned = upper.replace(/^0*([1-9]\d?)([A-Z])$/, '$2$1').replace(/^([A-Z])0+(?=\d)/, '$1')
  return /^[A-Z][1-9]\d?$/.test(turned) ? `write \`${turned}\`` : 'write the letter and the number of the field: `B4`'
}
