import type { TargetState } from '../../signals/fault/row.ts'
import type { Band, Verdict } from '../../signals/verdict.ts'
import type { SignalWords } from '../../signals/words/words.ts'
import { fill } from '../words/fill.ts'
import type { MeterWords } from '../words/meter.ts'
import type { LightPattern } from './light-pattern.ts'
import type { BasisWord, Field, MeterSheet } from './meter-sheet.ts'

/** What a value is rounded to where it is shown; verdicts come before. */
const decimals: Readonly<Record<string, number>> = { V: 1, mA: 2, Ω: 1, '°C': 1, 'l/min': 1, K: 1, inc: 0, '': 0 }

/** A number as the language writes it. Zeros at its end tell how exact a meter is; other quantities go without. */
export function numberText(words: MeterWords, value: number, unit: string, fixed = decimals[unit]): string {
  const text = fixed === undefined ? String(Number(value.toFixed(2))) : value.toFixed(fixed)
  const plain = /^-0[.0]*$/.test(text) ? text.slice(1) : text
  return plain.replace('-', '−').replace('.', words.meterDecimal)
}

/** `20.2 to 24.3 V`; an open end is left out. */
export function bandText(words: MeterWords, { low, high }: Band, unit: string): string {
  // A narrow band would lose its ends to rounding.
  const isNarrow = low !== undefined && high !== undefined && high - low < 0.5 && decimals[unit] === 1
  const said = (value: number) => numberText(words, value, unit, isNarrow ? 2 : decimals[unit])
  if (low !== undefined && low === high) return `${said(low)} ${unit}`.trim()
  if (low === undefined) return high === undefined ? words.meterAny : `≤ ${said(high)} ${unit}`.trim()
  return high === undefined ? `≥ ${said(low)} ${unit}`.trim() : fill(words.meterFrom, { low: said(low), high: said(high), unit }).trim()
}

export const basisText = (words: MeterWords, basis: readonly BasisWord[]): string => basis.map((it) => words[`meterBasis_${it}`]).join(', ')

export function verdictText(words: MeterWords, verdict: Verdict): string {
  return { pass: words.meterPass, fail: words.meterFail, 'no verdict': words.meterOpen }[verdict]
}

const measures = {
  referenceValue: 'meterReferenceValue',
  voltage: 'meterVoltage',
  thermovoltage: 'meterThermovoltage',
  coldJunction: 'meterColdJunction',
  couple: 'meterCouple',
  outputTerminal: 'meterOutputTerminal',
  atLoad: 'meterAtLoad',
  loadCurrent: 'meterLoadCurrent',
  coldLoad: 'meterColdLoad',
  encoderSupply: 'meterEncoderSupply',
  shaftSpeed: 'meterShaftSpeed',
  channelA: 'meterChannelA',
  channelB: 'meterChannelB',
  counts: 'meterCounts',
  flowReference: 'meterFlowReference',
  flowSupply: 'meterFlowSupply',
  pulsesAtMeter: 'meterPulsesAtMeter',
  pulsesAtCard: 'meterPulsesAtCard',
  pulsesStopped: 'meterPulsesStopped',
  flowShown: 'meterFlowShown',
  shown: 'meterShown',
  acrossCard: 'meterAcrossCard',
  windingUv: 'meterWindingUv',
  windingVw: 'meterWindingVw',
  windingWu: 'meterWindingWu',
  currentU: 'meterCurrentU',
  currentV: 'meterCurrentV',
  currentW: 'meterCurrentW',
} as const satisfies Partial<Record<Field['name'], keyof MeterWords>>

const isMeasure = (name: Field['name']): name is keyof typeof measures => Object.hasOwn(measures, name)

/** What is read at a field, without its state. */
export function fieldText(words: MeterWords, signal: SignalWords, { name, said }: Field): string {
  switch (name) {
    case 'supply':
      return words.meterSupply
    case 'element':
      return words.meterElement
    case 'leads':
      return words.meterLeads
    case 'reference':
      return words.meterReference
    case 'value':
      return said?.name ?? words.meterValue
    default:
      return isMeasure(name) ? words[measures[name]] : signal.points[name]
  }
}

/** A target is there or not; a contact is actuated or at rest; a load is switched on or off. */
export function targetText(words: MeterWords, signal: SignalWords, state: TargetState, sheet: MeterSheet): string {
  if (sheet.kind === 'output') return state === 'target' ? words.meterCommanded : words.meterNotCommanded
  const seen = seenIn(sheet)
  return seen ? signal.seen[seen[state]] : signal.states[state]
}

export function stateText(words: MeterWords, signal: SignalWords, { state, said }: Field, sheet: MeterSheet): string {
  return state ? targetText(words, signal, state, sheet) : (said?.state ?? '')
}

export function patternText(words: MeterWords, signal: SignalWords, pattern: LightPattern, sheet: MeterSheet): string {
  if (pattern === 'never' || pattern === 'always') return words[`meterLight_${pattern}`]
  if (sheet.kind === 'output') return words[`meterOutput_${pattern}`]
  const seen = seenIn(sheet)
  if (!seen) return words[`meterLight_${pattern}`]
  if (seen.target === 'actuated') return words[`meterContact_${pattern}`]
  return fill(words[`meterSeen_${pattern}`], { target: signal.seen[seen.target], none: signal.seen[seen.none] })
}

const seenIn = (sheet: MeterSheet) => (sheet.kind === 'switched' ? sheet.seen : undefined)
