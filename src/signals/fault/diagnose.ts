import { isRefused, type Refused } from '../refusals.ts'
import { within } from '../verdict.ts'
import type { SwitchedCircuit } from './circuit.ts'
import { faultTable } from './fault-table.ts'
import { type LevelBand, levelBand, type NoBand } from './level.ts'
import { type NextReading, nextReading } from './next-reading.ts'
import type { FaultRow, Indicator, Light, Point, TargetState } from './row.ts'

/** A reading in V, at `loop-current` in mA; or what an indicator does. */
export type Observation = { state: TargetState; point: Point; value: number } | { state: TargetState; indicator: Indicator; shows: Light }

export interface Diagnosis {
  row: FaultRow
  speaksFor: readonly Observation[]
  speaksAgainst: readonly Observation[]
}

/** An observation that could not be judged, and what is missing for it. */
export interface NotJudged {
  observation: Observation
  /** `number`: the value is none. `place`: this circuit has no such point or indicator. */
  missing: readonly (NoBand['missing'][number] | 'number' | 'place')[]
}

export interface Findings {
  /** Rows that nothing speaks against; where there are none, those that least speaks against. The most likely first. */
  diagnoses: readonly Diagnosis[]
  /** Whether nothing speaks against the first row. */
  fits: boolean
  notJudged: readonly NotJudged[]
  /** What to look at next; absent where no reading tells the rows apart. */
  next?: NextReading
}

/** How likely an observation is where a row foretells nothing: one of three lights, one of some thirty volts. */
const anyLight = 1 / 3
const anyReading = 1 / 30
const against = 0.001

/**
 * The rows of the fault table that fit what was seen. The likelihood of a row is its weight times that of each
 * observation under it, so a row that foretells a narrow band comes before one that allows nearly anything.
 */
export function diagnose(observations: readonly Observation[], circuit: SwitchedCircuit): Findings | Refused {
  const table = faultTable(circuit)
  if (isRefused(table)) return table
  const notJudged = observations.flatMap((observation) => withoutJudgement(observation, table, circuit))
  const judged = observations.filter((observation) => !notJudged.some((it) => it.observation === observation))
  const all = table.map((row) => weigh(row, judged, circuit))
  const least = Math.min(...all.map(({ diagnosis }) => diagnosis.speaksAgainst.length))
  const diagnoses = all
    .filter(({ diagnosis }) => diagnosis.speaksAgainst.length === least)
    .sort((a, b) => b.likelihood - a.likelihood)
    .map(({ diagnosis }) => diagnosis)
  const next = nextReading(
    diagnoses.map(({ row }) => row),
    observations,
    circuit,
  )
  return { diagnoses, fits: least === 0, notJudged, ...(next ? { next } : {}) }
}

function withoutJudgement(observation: Observation, table: readonly FaultRow[], circuit: SwitchedCircuit): NotJudged[] {
  const known = table.some(({ readings, lights }) => ('point' in observation ? observation.point in readings : observation.indicator in lights))
  if (!known) return [{ observation, missing: ['place'] }]
  if (!('point' in observation)) return []
  if (!Number.isFinite(observation.value)) return [{ observation, missing: ['number'] }]
  const levels = table.flatMap((row) => row.readings[observation.point]?.[observation.state] ?? [])
  const bands = levels.map((level) => levelBand(level, observation.point, circuit))
  const missing = [...new Set(bands.flatMap((band) => ('missing' in band ? band.missing : [])))]
  return missing.length > 0 ? [{ observation, missing }] : []
}

function weigh(row: FaultRow, observations: readonly Observation[], circuit: SwitchedCircuit): { diagnosis: Diagnosis; likelihood: number } {
  const shares = observations.map((observation) => [observation, likelihood(row, observation, circuit)] as const)
  const speaking = (test: (share: number) => boolean) =>
    shares.flatMap(([observation, share]) => (share !== undefined && test(share) ? [observation] : []))
  return {
    diagnosis: { row, speaksFor: speaking((share) => share > against), speaksAgainst: speaking((share) => share <= against) },
    likelihood: shares.reduce((product, [observation, share]) => product * (share ?? ('point' in observation ? anyReading : anyLight)), row.weight),
  }
}

/** Undefined where the row foretells nothing. */
function likelihood(row: FaultRow, observation: Observation, circuit: SwitchedCircuit): number | undefined {
  if ('indicator' in observation) {
    const lights = row.lights[observation.indicator]?.[observation.state]
    if (!lights) return undefined
    return lights.includes(observation.shows) ? 1 / lights.length : against
  }
  const level = row.readings[observation.point]?.[observation.state]
  const found = level && levelBand(level, observation.point, circuit)
  return found && 'band' in found ? inBand(observation.value, found) : undefined
}

/** Nine in ten readings lie in the usual part of a band. */
function inBand(value: number, { band, usual }: LevelBand): number {
  if (!within(value, band)) return against
  const [width, usualWidth] = [band.high - band.low, usual.high - usual.low]
  if (usualWidth >= width) return 1 / Math.max(1, width)
  return within(value, usual) ? 0.9 / Math.max(1, usualWidth) : 0.1 / Math.max(1, width - usualWidth)
}
