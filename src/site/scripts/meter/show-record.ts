import { bandText, basisText, fieldText, patternText, stateText, verdictText } from '../../meter/meter-words.ts'
import { element, required } from '../dom.ts'
import { isEmpty } from './kept.ts'
import type { MeterPage, MeterState } from './meter-state.ts'
import { outcomeNodes } from './outcome-nodes.ts'
import { whenText } from './show-outcome.ts'

/** The record that is printed: every reading with its limit, what that rests on, and its verdict. */
export function showRecord(page: MeterPage, state: MeterState): void {
  const { root, words, signal, sheet } = page
  const record = required<HTMLElement>(root, '[data-record]')
  record.hidden = isEmpty(state.kept)
  const rows = state.judged.flatMap(({ field, text, expected, verdict }) => {
    if (text === undefined) return []
    const cells = [
      fieldText(words, signal, field),
      stateText(words, signal, field, sheet),
      text,
      expected ? bandText(words, expected.band, expected.unit) : verdict ? words.meterOpen : '',
      expected ? basisText(words, expected.basis) : '',
      verdict ? verdictText(words, verdict) : '',
    ]
    return [element('tr', {}, ...cells.map((cell) => element('td', { text: cell })))]
  })
  const lights = page.indicators.flatMap((indicator) => {
    const pattern = state.kept.lights[indicator]
    return pattern ? [element('li', { text: `${signal.indicators[indicator]}: ${patternText(words, signal, pattern, sheet)}` })] : []
  })
  required(record, '[data-record-readings]').replaceChildren(...rows)
  required(record, '[data-record-lights]').replaceChildren(...lights)
  required(record, '[data-record-outcome]').replaceChildren(...outcomeNodes(page, state))
  if (!isEmpty(state.kept)) required(record, '[data-record-date]').textContent = whenText(state.kept.atMs)
}
