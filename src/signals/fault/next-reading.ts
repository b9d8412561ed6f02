import type { Band } from '../verdict.ts'
import type { SwitchedCircuit } from './circuit.ts'
import type { Observation } from './diagnose.ts'
import { levelBand } from './level.ts'
import { type FaultRow, type Indicator, type Point, type TargetState, targetStates } from './row.ts'

/** What to look at next, and how well it tells the rows apart. */
export type NextReading = { state: TargetState; tellsApart: number } & ({ point: Point } | { indicator: Indicator })

/** Looking comes before measuring; at the card before at the sensor. */
const indicators: readonly Indicator[] = ['tag', 'card-led', 'output-led', 'fault-led', 'other-led']
const points: readonly Point[] = [
  'input-at-card',
  'loop-current',
  'supply-at-sensor',
  'feed-at-sensor',
  'across-sensor',
  'output-at-sensor',
  'brown-to-common',
  'input-to-cabinet',
]

/** The reading not yet taken that tells most rows apart; the first of equal ones. Undefined where none does. */
export function nextReading(rows: readonly FaultRow[], taken: readonly Observation[], circuit: SwitchedCircuit): NextReading | undefined {
  const first = rows.slice(0, 8)
  const candidates = targetStates.flatMap((state) => [
    ...indicators.map((indicator) => ({ state, indicator, tellsApart: pairs(first, (a, b) => lightsApart(a, b, indicator, state)) })),
    ...points.map((point) => ({ state, point, tellsApart: pairs(first, (a, b) => readingsApart(a, b, point, state, circuit)) })),
  ])
  const open = candidates.filter((it) => it.tellsApart > 0 && !taken.some((seen) => seen.state === it.state && sameThing(seen, it)))
  const most = Math.max(...open.map(({ tellsApart }) => tellsApart))
  return open.find(({ tellsApart }) => tellsApart === most)
}

function sameThing(a: { point?: Point; indicator?: Indicator }, b: { point?: Point; indicator?: Indicator }): boolean {
  return a.point === b.point && a.indicator === b.indicator
}

/** Pairs with the first row, which is the likeliest, count double. */
function pairs(rows: readonly FaultRow[], apart: (a: FaultRow, b: FaultRow) => number): number {
  const weighed = rows.flatMap((a, index) => rows.slice(index + 1).map((b) => apart(a, b) * (index === 0 ? 2 : 1)))
  return weighed.reduce((sum, weight) => sum + weight, 0)
}

function lightsApart(a: FaultRow, b: FaultRow, indicator: Indicator, state: TargetState): number {
  const [one, other] = [a.lights[indicator]?.[state], b.lights[indicator]?.[state]]
  return one !== undefined && other !== undefined && !one.some((light) => other.includes(light)) ? 1 : 0
}

/** Half where the bands meet and only the usual readings do not. */
function readingsApart(a: FaultRow, b: FaultRow, point: Point, state: TargetState, circuit: SwitchedCircuit): number {
  const [one, other] = [a, b].map(({ readings }) => readings[point]?.[state]).map((level) => level && levelBand(level, point, circuit))
  if (!one || !other || !('band' in one) || !('band' in other)) return 0
  const disjoint = (p: Required<Band>, q: Required<Band>) => p.high <= q.low || q.high <= p.low
  if (disjoint(one.band, other.band)) return 1
  return disjoint(one.usual, other.usual) ? 0.5 : 0
}
