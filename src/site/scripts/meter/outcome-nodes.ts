import type { NextReading } from '../../../signals/fault/next-reading.ts'
import type { FaultRow, Stretch } from '../../../signals/fault/row.ts'
import { faultWords } from '../../../signals/words/fault-words.ts'
import { fieldText, numberText, targetText } from '../../meter/meter-words.ts'
import type { Causes, Faults, Value } from '../../meter/outcome-of.ts'
import { fill } from '../../words/fill.ts'
import { element } from '../dom.ts'
import { isEmpty } from './kept.ts'
import type { MeterPage, MeterState } from './meter-state.ts'

/** How many rows are shown besides the first. */
const others = 4

/** What the readings mean, for the page and for the record. */
export function outcomeNodes(page: MeterPage, { outcome, kept, judged }: MeterState): HTMLElement[] {
  const { words, signal } = page
  switch (outcome.kind) {
    case 'nothing':
      return isEmpty(kept) ? [element('p', { className: 'hint', text: words.meterNothingYet })] : verdictNodes(page, judged)
    case 'refused':
      return [element('p', { className: 'fault-first', text: signal.refusals[outcome.refused.refused] })]
    case 'faults':
      return faultNodes(page, outcome, kept.readings.supply === undefined)
    case 'value':
      return valueNodes(page, outcome)
    case 'causes':
      return loadNodes(page, outcome)
  }
}

/** Of readings that lead to no diagnosis. */
function verdictNodes({ words, signal, sheet }: MeterPage, judged: MeterState['judged']): HTMLElement[] {
  const failed = judged.filter(({ verdict }) => verdict === 'fail').map(({ field }) => fieldText(words, signal, field))
  const [text, more] = [failed.length > 0 ? fill(words.meterSomeFail, { names: failed.join(', ') }) : words.meterAllPass, words.meterMore]
  return [element('p', { className: 'fault-name', text }), ...(sheet.kind === 'switched' ? [element('p', { className: 'hint', text: more })] : [])]
}

function faultNodes(page: MeterPage, { findings, apart }: Faults, isSupplyUnknown: boolean): HTMLElement[] {
  const { words, signal } = page
  const [first, ...rest] = findings.diagnoses
  if (!first) return []
  const notJudged = findings.notJudged.map(({ observation, missing }) => {
    const name = 'point' in observation ? signal.points[observation.point] : signal.indicators[observation.indicator]
    const said = fill(words.meterMissing, { missing: missing.map((it) => words[`meterMissing_${it}`]).join(', ') })
    return element('li', { text: `${name}: ${said}` })
  })
  return [
    element('p', { className: 'fault-fit', text: findings.fits ? words.meterFits : words.meterNoneFits }),
    ...(!findings.fits && isSupplyUnknown && page.fields.some(({ id }) => id === 'supply') ? [element('p', { text: words.meterSupplyUnknown })] : []),
    element('div', { className: 'fault-first' }, ...rowNodes(first.row, page)),
    ...(rest.length > 0
      ? [
          element('p', { className: 'fault-fit', text: words.meterOthers }),
          element(
            'ol',
            { className: 'fault-others' },
            ...rest.slice(0, others).map(({ row }, index) => element('li', {}, ...rowNodes(row, page), ...apartNodes(apart[index + 1], page))),
          ),
        ]
      : []),
    ...(notJudged.length > 0 ? [element('p', { className: 'fault-fit', text: words.meterNotJudged }), element('ul', {}, ...notJudged)] : []),
  ]
}

function rowNodes({ id, suspected }: FaultRow, { words, signal, sheet }: MeterPage): HTMLElement[] {
  const told = sheet.kind === 'switched' ? faultWords(signal, id, sheet) : signal.faults[id]
  return causeNodes(told, suspected, words, signal)
}

function apartNodes(next: NextReading | undefined, page: MeterPage): HTMLElement[] {
  return next ? [element('p', { className: 'hint', text: `${page.words.meterApart}: ${readingName(next, page)}` })] : []
}

/** What is looked at, and in which state of the target. */
export function readingName(next: NextReading, { words, signal, sheet }: MeterPage): string {
  const name = 'point' in next ? signal.points[next.point] : signal.indicators[next.indicator]
  return `${name}, ${targetText(words, signal, next.state, sheet)}`
}

/** What to do with a reading that has no cause to look for. */
const advice = {
  measuring: 'meterDo_measuring',
  saturated: 'meterDo_saturated',
  betweenStates: 'meterDo_betweenStates',
  temperature: 'meterDo_temperature',
  inRange: 'meterDo_inRange',
  atZero: 'meterDo_atZero',
  balanced: 'meterDo_balanced',
  screen: 'meterDo_screen',
  terminalsMissing: 'meterDo_terminalsMissing',
} as const satisfies Partial<Record<Value['sign'], keyof MeterPage['words']>>

function valueNodes({ words, signal, sheet }: MeterPage, { sign, value, unit, difference, causes }: Value): HTMLElement[] {
  const range = 'low' in sheet && sheet.low !== undefined && sheet.high !== undefined ? { low: sheet.low, high: sheet.high } : undefined
  const outside = range && value !== undefined && (value < range.low || value > range.high)
  const [first, ...rest] = causes.map(({ id, suspected }) => causeNodes(signal.causes[id], suspected, words, signal))
  const differenceUnit = unit === '°C' ? 'K' : unit
  const notes = [
    ...(difference === undefined
      ? []
      : [fill(words.meterDifference, { difference: numberText(words, difference, differenceUnit), unit: differenceUnit })]),
    ...(range && outside ? [fill(words.meterOfRange, { low: range.low, high: range.high, unit })] : []),
  ]
  const key = causes.length === 0 && sign in advice ? advice[sign as keyof typeof advice] : undefined
  return [
    ...(value === undefined ? [] : [element('p', { className: 'meter-figure', text: `${numberText(words, value, unit)} ${unit}` })]),
    element('p', { text: words[`meterSign_${sign}`] }),
    ...notes.map((text) => element('p', { text })),
    ...(first ? [element('div', { className: 'fault-first' }, ...first)] : []),
    ...(rest.length > 0 ? [element('ol', { className: 'fault-others' }, ...rest.map((nodes) => element('li', {}, ...nodes)))] : []),
    ...(key ? [stepNode(words[key], words)] : []),
  ]
}

const stepNode = (text: string, words: MeterPage['words']): HTMLElement =>
  element('p', {}, element('b', { text: `${words.meterNextStep}: ` }), element('span', { text }))

function causeNodes(
  { diagnosis, nextStep }: { diagnosis: string; nextStep: string },
  suspected: Stretch | undefined,
  words: MeterPage['words'],
  signal: MeterPage['signal'],
): HTMLElement[] {
  return [
    element('p', { className: 'fault-name', text: diagnosis }),
    stepNode(nextStep, words),
    ...(suspected ? [element('p', { className: 'hint', text: `${words.meterSuspectedPart}: ${signal.stretches[suspected]}` })] : []),
  ]
}

/** Of a load or an encoder: the likeliest cause, and what else fits. */
function loadNodes({ words, signal }: MeterPage, { of, findings: { healthy, fits, causes } }: Causes): HTMLElement[] {
  const said = causes.slice(0, others + 1).map(({ id, suspected }) => causeNodes(signal.causes[id], suspected, words, signal))
  const [first, ...rest] = healthy ? [causeNodes(signal.healthy[of], undefined, words, signal), ...said] : said
  return [
    element('p', { className: 'fault-fit', text: fits ? words.meterFits : words.meterNoneFits }),
    ...(first ? [element('div', { className: 'fault-first' }, ...first)] : []),
    ...(rest.length > 0
      ? [
          element('p', { className: 'fault-fit', text: words.meterOthers }),
          element('ol', { className: 'fault-others' }, ...rest.map((nodes) => element('li', {}, ...nodes))),
        ]
      : []),
  ]
}

/** The stretch of the signal path that is suspected. */
export function suspectedOf({ outcome }: MeterState): Stretch | undefined {
  if (outcome.kind === 'value') return outcome.causes[0]?.suspected
  if (outcome.kind === 'causes') return outcome.findings.healthy ? undefined : outcome.findings.causes[0]?.suspected
  return outcome.kind === 'faults' ? outcome.findings.diagnoses[0]?.row.suspected : undefined
}
