import type { CauseId } from '../../signals/fault/cause.ts'
import { faultTable } from '../../signals/fault/fault-table.ts'
import { levelBand } from '../../signals/fault/level.ts'
import { type FaultRow, type Indicator, type Point, targetStates } from '../../signals/fault/row.ts'
import { isRefused } from '../../signals/refusals.ts'
import { faultWords } from '../../signals/words/fault-words.ts'
import type { SignalWords } from '../../signals/words/words.ts'
import { fieldsOf, indicatorsOf } from '../meter/fields-of.ts'
import type { SwitchedSheet } from '../meter/meter-sheet.ts'
import { bandText } from '../meter/meter-words.ts'
import type { MeterWords } from '../words/meter.ts'

export interface FaultCell {
  /** One line a state: with target, without. */
  lines: string[]
}
export interface FaultTableShown {
  headings: string[]
  rows: { id: FaultRow['id'] | CauseId; diagnosis: string; nextStep: string; cells: FaultCell[] }[]
}

/** The whole fault table of a circuit in words and figures; undefined where sensor and card do not go together. */
export function faultRowsOf(sheet: SwitchedSheet, words: MeterWords, signal: SignalWords): FaultTableShown | undefined {
  const table = faultTable(sheet.circuit)
  if (isRefused(table)) return undefined
  const points = [...new Set(fieldsOf(sheet).flatMap(({ name, state }) => (state ? [name as Point] : [])))]
  const indicators = indicatorsOf(sheet)
  const reading = (row: FaultRow, point: Point): FaultCell => ({ lines: targetStates.map((state) => readingText(row, point, state)) })
  const light = (row: FaultRow, indicator: Indicator): FaultCell => ({
    lines: targetStates.map((state) => lightText(row, indicator, state)),
  })
  function readingText({ readings }: FaultRow, point: Point, state: 'target' | 'none'): string {
    const level = readings[point]?.[state]
    if (!level) return words.meterAny
    const found = levelBand(level, point, sheet.circuit)
    return 'band' in found ? bandText(words, found.band, point === 'loop-current' ? 'mA' : 'V') : signal.levels[level]
  }
  function lightText({ lights }: FaultRow, indicator: Indicator, state: 'target' | 'none'): string {
    const seen = lights[indicator]?.[state]
    return seen && seen.length < 3 ? seen.map((it) => signal.lights[it]).join(` ${words.meterOr} `) : words.meterAny
  }
  return {
    headings: [...indicators.map((it) => signal.indicators[it]), ...points.map((it) => signal.points[it])],
    rows: table.map((row) => ({
      id: row.id,
      ...faultWords(signal, row.id, sheet),
      cells: [...indicators.map((it) => light(row, it)), ...points.map((it) => reading(row, it))],
    })),
  }
}
