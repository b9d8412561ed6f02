import { type Column, type TableName, tables } from '../model/schema/tables.ts'
import type { ColumnGuesses } from './guess-columns.ts'

/** What machine.yaml must say of the values of an export, so that they can be read. */
export interface ValueGuesses {
  decimal?: 'comma'
  /** Our column name -> the word of the file -> our word for it. */
  values?: Readonly<Record<string, Readonly<Record<string, string>>>>
}

/** Words of Spanish and German exports for ours, in small letters. Common practice, from memory. */
const words: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  contact: { na: 'NO', no: 'NO', nc: 'NC', schließer: 'NO', s: 'NO', öffner: 'NC', ö: 'NC' },
  reaction: { parada: 'stop', paro: 'stop', stopp: 'stop', halt: 'stop', espera: 'hold', pausa: 'hold', aviso: 'message', meldung: 'message' },
  spare: { desgaste: 'wear', verschleiß: 'wear', verschleißteil: 'wear', repuesto: 'spare', ersatzteil: 'spare', consumible: 'consumable' },
  type: { ed: 'DI', sd: 'DO', ea: 'AI', sa: 'AO', de: 'DI', da: 'DO', ae: 'AI', aa: 'AO' },
  kind: {
    esquema: 'schematic',
    stromlaufplan: 'schematic',
    planta: 'layout',
    aufstellplan: 'layout',
    neumático: 'pneumatic',
    pneumatikplan: 'pneumatic',
  },
}

/** Guesses the decimal sign of an export and which of our words its own are: those that all mean one of ours. */
export function guessValues(
  table: TableName,
  { guesses }: ColumnGuesses,
  header: readonly string[],
  rows: readonly (readonly string[])[],
): ValueGuesses {
  const columns: Readonly<Record<string, Column>> = tables[table]
  const cellsOf = (heading: string) => [...new Set(rows.flatMap((cells) => cells[header.indexOf(heading)]?.trim() || []))]
  const numbers = guesses.flatMap(({ column, heading }) => (columns[column]?.type === 'number' ? cellsOf(heading) : []))
  // A comma before three digits may part thousands, and then nothing is known of the sign.
  const hasCommas = numbers.some((cell) => /^-?\d+,\d+$/.test(cell)) && !numbers.some((cell) => /\.|^-?\d{1,3},\d{3}$/.test(cell))
  const values = guesses.flatMap(({ column, heading }) => {
    const type = columns[column]?.type
    if (typeof type !== 'object') return []
    const found = cellsOf(heading).flatMap((cell) => {
      const ours = words[column]?.[cell.toLowerCase()]
      return ours && type.oneOf.includes(ours) && !type.oneOf.includes(cell) ? [[cell, ours] as const] : []
    })
    return found.length > 0 ? [[column, Object.fromEntries(found)] as const] : []
  })
  return { ...(hasCommas ? { decimal: 'comma' } : {}), ...(values.length > 0 ? { values: Object.fromEntries(values) } : {}) }
}
