import type { Indicator } from '../../../signals/fault/row.ts'
import { readQuantity } from '../../../signals/read-quantity.ts'
import type { Verdict } from '../../../signals/verdict.ts'
import type { SignalWords } from '../../../signals/words/words.ts'
import { isGiven } from '../../meter/fields-of.ts'
import { expectationOf, judgeField, withMeasured } from '../../meter/judge-field.ts'
import type { Expectation, Field, MeterSheet, Values } from '../../meter/meter-sheet.ts'
import { type Outcome, outcomeOf } from '../../meter/outcome-of.ts'
import type { MeterWords } from '../../words/meter.ts'
import type { Kept } from './kept.ts'

/** What never changes on a page. */
export interface MeterPage {
  root: HTMLElement
  sheet: MeterSheet
  fields: readonly Field[]
  indicators: readonly Indicator[]
  words: MeterWords
  signal: SignalWords
}

export interface JudgedField {
  field: Field
  /** As typed; absent where nothing was read. */
  text?: string
  expected?: Expectation
  /** Absent too for what is read of another instrument. */
  verdict?: Verdict
}

/** All that is shown of what was entered. */
export interface MeterState {
  kept: Kept
  judged: readonly JudgedField[]
  outcome: Outcome
}

export function stateOf({ sheet, fields }: MeterPage, kept: Kept): MeterState {
  const values: Values = Object.fromEntries(
    fields.flatMap(({ id, unit }) => {
      const read = readQuantity(kept.readings[id] ?? '', unit)
      return 'value' in read ? [[id, read.value]] : []
    }),
  )
  const measured = withMeasured(sheet, values)
  const judged = fields.map((field): JudgedField => {
    const [text, value, expected] = [kept.readings[field.id], values[field.id], expectationOf(field, measured, values)]
    return {
      field,
      ...(expected ? { expected } : {}),
      ...(text === undefined || value === undefined
        ? {}
        : { text, ...(isGiven(field) ? {} : { verdict: judgeField(field, value, measured, values) }) }),
    }
  })
  return { kept, judged, outcome: outcomeOf(sheet, values, kept.lights) }
}
