import type { NamedThing, Reference } from '../model/machine.ts'
import type { TableName } from '../model/schema/tables.ts'
import type { SheetCell } from '../model/sheet-reference.ts'
import type { Located, Place } from '../source/place.ts'

/** Which columns of a table name something that the machine must have. */
const named: Record<TableName, Readonly<Record<string, NamedThing>>> = {
  devices: { area: 'area', part: 'part', drawing: 'drawing', fits: 'option' },
  signals: { tag: 'tag', card: 'card', drawing: 'drawing', fits: 'option' },
  cards: { part: 'part', drawing: 'drawing', fits: 'option' },
  parts: { supersededBy: 'part', alternatives: 'part', fits: 'option' },
  drawings: { supersededBy: 'drawing', fits: 'option' },
  alarms: { area: 'area', tags: 'tag', fits: 'option' },
  formats: { tag: 'tag', fits: 'option' },
  symbols: {},
}

interface AnyRow {
  readonly place: Place
  readonly fits: readonly Located<string>[]
}

/** What the rows of a table name. A reference to a drawing carries the sheet of its row. */
export function tableReferences(table: TableName, rows: readonly AnyRow[]): Reference[] {
  const references: Reference[] = []
  for (const row of rows) {
    const values = new Map<string, unknown>(Object.entries(row))
    const fits = row.fits.map(({ value }) => value)
    for (const [column, kind] of Object.entries(named[table])) {
      const value = values.get(column)
      const cells = (Array.isArray(value) ? value : value === undefined ? [] : [value]) as Located<string>[]
      for (const { value: id, place } of cells) {
        const sheet = kind === 'drawing' && column === 'drawing' ? (values.get('sheet') as SheetCell | undefined) : undefined
        const listed = table === 'alarms' && column === 'tags'
        references.push({
          kind,
          id,
          place,
          fits: kind === 'option' ? [] : fits,
          ...(sheet ? { sheet } : {}),
          ...(sheet?.zone ? { zone: sheet.zone } : {}),
          ...(listed ? { listed } : {}),
        })
      }
    }
  }
  return references
}
