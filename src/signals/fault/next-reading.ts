import type { SwitchedCircuit } from './circuit.ts'
import type { Observation } from './diagnose.ts'
import { levelBand } from './level.ts'
import { type FaultRow, type Indicator, type Point, type TargetState, targetStates } from './row.ts'

/** What to look at next, and how many pairs of rows it tells apart. */
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
    ...indicators.map((indicator) => ({ state, indicator, tellsApart: pairs(first, (a, b) => lightsDiffer(a, b, indicator, state)) })),
    ...points.map((point) => ({ state, point, tellsApart: pairs(first, (a, b) => readingsDiffer(a, b, point, state, circuit)) })),
  ])
  const open = candidates.filter((it) => it.tellsApart > 0 && !taken.some((seen) => seen.state === it.state && sameThing(seen, it)))
  const most = Math.max(...open.map(({ tellsApart }) => tellsApart))
  return open.find(({ tellsApart }) => tellsApart === most)
}

function sameThing(a: { point?: Point; indicator?: Indicator }, b: { point?: Point; indicator?: Indicator }): boolean {
  return a.point === b.point && a.indicator === b.indicator
}

/** Pairs with the first row, which is the likeliest, count double. */
function pairs(rows: readonly FaultRow[], differ: (a: FaultRow, b: FaultRow) => boolean): number {
  return rows.reduce((sum, a, i) => sum + rows.slice(i + 1).filter((b) => differ(a, b)).length * (i === 0 ? 2 : 1), 0)
}

function lightsDiffer(a: FaultRow, b: FaultRow, indicator: Indicator, state: TargetState): boolean {
  const [one, other] = [a.lights[indicator]?.[state], b.lights[indicator]?.[state]]
  return one !== undefined && other !== undefined && !one.some((light) => other.includes(light))
}

function readingsDiffer(a: FaultRow, b: FaultRow, point: Point, state: TargetState, circuit: SwitchedCircuit): boolean {
  const [one, other] = [a, b].map(({ readings }) => readings[point]?.[state]).map((level) => level && levelBand(level, point, circuit))
  if (!one || !other || !('band' in one) || !('band' in other)) return false
  return one.band.high < other.band.low || other.band.high < one.band.low
}
