import type { FieldRow } from '../../signals/fault/field-rows.ts'
import type { Band } from '../../signals/verdict.ts'
import type { SignalWords } from '../../signals/words/words.ts'
import { fieldsOf } from '../meter/fields-of.ts'
import type { EncoderSheet, Field, FlowSheet, OutputSheet } from '../meter/meter-sheet.ts'
import { bandText, fieldText } from '../meter/meter-words.ts'
import { rowsOf } from '../meter/outcome-of.ts'
import type { MeterWords } from '../words/meter.ts'
import type { FaultTableShown } from './fault-rows.ts'

/** The whole fault table of a load, an encoder or a flow meter in words and figures. */
export function fieldFaultRows(sheet: OutputSheet | EncoderSheet | FlowSheet, words: MeterWords, signal: SignalWords): FaultTableShown {
  const rows = rowsOf(sheet)
  const fields = fieldsOf(sheet).filter(({ id }) => rows.some(({ reads }) => reads[id]))
  const names = [...new Set(fields.map((field) => fieldText(words, signal, field)))]
  const line = ({ reads }: FieldRow<string>, { id, unit }: Field): string => (reads[id] ? bandText(words, reads[id], unit) : words.meterAny)
  const lights =
    sheet.kind === 'output'
      ? [
          { name: signal.indicators.tag, ids: ['tag.on'] },
          { name: signal.indicators['card-led'], ids: ['led.on', 'led.off'] },
        ]
      : []
  const light = (band: Band | undefined): string => (band === undefined ? words.meterAny : band.low === 1 ? signal.lights.lit : signal.lights.dark)
  // Two rows of one fault are two ways in which it shows.
  return {
    headings: [...lights.map(({ name }) => name), ...names],
    rows: rows.map((row) => ({
      ...(row.id === 'healthy' ? { id: 'healthy', ...signal.healthy[sheet.kind] } : { id: row.id, ...signal.causes[row.id] }),
      cells: [
        ...lights.map(({ ids }) => ({ lines: ids.map((id) => light(row.reads[id])) })),
        ...names.map((name) => ({ lines: fields.filter((field) => fieldText(words, signal, field) === name).map((field) => line(row, field)) })),
      ],
    })),
  }
}
