import type { Observation } from '../signals/fault/diagnose.ts'
import { type Indicator, type Light, type Point, type TargetState, targetStates } from '../signals/fault/row.ts'
import { type LoopState, loopLimits, loopState } from '../signals/loop-current.ts'
import { type Reading as Quantity, readQuantity, type Unread } from '../signals/read-quantity.ts'
import { judge, type Verdict } from '../signals/verdict.ts'
import type { Checkout } from './checkout-of.ts'
import type { Expectation, ExpectationPoint, ExpectationState } from './expectation.ts'

const indicators: readonly Indicator[] = ['tag', 'card-led', 'output-led', 'other-led', 'fault-led']
const lights: readonly Light[] = ['lit', 'dark', 'unsteady']

/** What was typed: `12,1 mA`, `terminal=0.2 V`, `terminal:target=0.2 V`, `card-led:none=dark`. */
export interface Taken {
  typed: string
  /** A point of the expectations or of the fault table, as typed. */
  point: string | undefined
  state: ExpectationState | undefined
  quantity?: Quantity
  light?: Light
}

/** Undefined parts are those that were not typed. */
export function readTaken(typed: string): Taken | Unread {
  const [, where, value = typed] = /^([a-z0-9:-]+)=(.*)$/.exec(typed) ?? []
  const [point, state] = where?.split(':') ?? []
  const taken = { typed, point: point || undefined, state: state as ExpectationState | undefined }
  const light = lights.find((it) => it === value.trim())
  if (light) return { ...taken, light }
  const quantity = readQuantity(value)
  return 'unread' in quantity ? quantity : { ...taken, quantity }
}

const points = ['device', 'pin', 'terminal', 'card', 'address'] as const satisfies readonly ExpectationPoint[]
const meterPoints: readonly string[] = [
  'input-at-card',
  'supply-at-sensor',
  'output-at-sensor',
  'brown-to-common',
  'input-to-cabinet',
  'across-sensor',
  'feed-at-sensor',
  'loop-current',
] satisfies readonly Point[]

interface NoSuchName {
  written: string
  kind: 'point' | 'state' | 'indicator'
  known: readonly string[]
}

/** What in a reading names no point and no state. */
export function wherePossible({ point, state, light }: Taken): NoSuchName | undefined {
  if (light && !indicators.some((it) => it === point)) return { written: point ?? '', kind: 'indicator', known: indicators }
  const known = [...points, ...meterPoints]
  if (!light && point !== undefined && !known.includes(point)) return { written: point, kind: 'point', known }
  const states = Object.keys(stateOrder)
  return state === undefined || states.includes(state) ? undefined : { written: state, kind: 'state', known: states }
}

/** Every state, so that the types hold the list whole. */
const stateOrder: Readonly<Record<ExpectationState, true>> = {
  target: true,
  none: true,
  on: true,
  rising: true,
  falling: true,
  'range-low': true,
  'range-middle': true,
  'range-high': true,
  'failure-low': true,
  'failure-high': true,
  'in-service': true,
  isolated: true,
  always: true,
}

/** A reading against one expectation that it may be of. */
export interface Judged {
  expectation: Expectation
  /** In the unit of the expectation. */
  value: number
  verdict: Verdict
}

/** Every expectation that a reading can be of, by its point, its state and its unit. A failure is none to be reached. */
export function judgeTaken({ point, state, quantity }: Taken, { expectations }: Pick<Checkout, 'expectations'>): Judged[] {
  if (!quantity) return []
  const { value, unit } = quantity.typed
  return expectations.flatMap((expectation) => {
    if (point !== undefined && point !== expectation.point && point !== expectation.meter) return []
    if (state !== undefined && state !== expectation.state) return []
    // A measuring signal may stand anywhere in its range: only a state that is named has a verdict.
    if (state === undefined && /^range/.test(expectation.state)) return []
    if (expectation.unit === '' || expectation.unit === '1' || /^failure/.test(expectation.state)) return []
    const found = readQuantity(`${value} ${unit}`, expectation.unit)
    if ('unread' in found) return []
    const { low, high } = expectation
    const band = { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }
    const verdict = low === undefined && high === undefined ? 'no verdict' : judge(found.value, band)
    return [{ expectation, value: found.value, verdict }]
  })
}

/** What a current in a 4–20 mA loop says by itself; undefined for another device or reading. */
export function loopStateOf({ quantity }: Taken, { technology, expectations }: Checkout): LoopState | undefined {
  if (technology !== 'current-loop' || quantity?.dimension !== 'current') return undefined
  const end = (state: ExpectationState, key: 'low' | 'high') => expectations.find((it) => it.state === state)?.[key]
  const [low, high] = [end('failure-low', 'high'), end('failure-high', 'low')]
  const found = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, 'mA')
  if ('unread' in found || low === undefined || high === undefined) return undefined
  const failureLowToMa = { ...loopLimits.failureLowToMa, value: low }
  return loopState(found.value, { ...loopLimits, failureLowToMa, failureHighFromMa: { ...loopLimits.failureHighFromMa, value: high } })
}

/** The point of the fault table that a point of the path is. */
const meters: Readonly<Record<string, Point>> = { terminal: 'input-at-card', pin: 'supply-at-sensor' }
const isState = (state: ExpectationState | undefined): state is TargetState => targetStates.some((it) => it === state)

/** What was taken, as the fault table takes it; `assumed` is the state of what has none. Empty where it is no reading of a circuit. */
export function observationsOf(all: readonly Taken[], assumed: TargetState, isNamur: boolean): Observation[] {
  return all.flatMap(({ point, state, quantity, light }): Observation[] => {
    const at = isState(state) ? state : assumed
    const indicator = indicators.find((it) => it === point)
    if (light) return indicator ? [{ state: at, indicator, shows: light }] : []
    if (!quantity) return []
    const wanted = isNamur ? 'mA' : 'V'
    const found = readQuantity(`${quantity.typed.value} ${quantity.typed.unit}`, wanted)
    if ('unread' in found) return []
    const where = point === undefined ? (isNamur ? 'loop-current' : 'input-at-card') : (meters[point] ?? (point as Point))
    return [{ state: at, point: isNamur && point === 'terminal' ? 'loop-current' : where, value: found.value }]
  })
}
