import type { Located } from '../source/place.ts'
import type { crushedParts, HazardGroup, lifePhases, probabilities, severities } from './schema/hazards-file.ts'
import type { Words } from './words.ts'

/** A hazard of the risk assessment, as hazards.yaml declares it. */
export interface Hazard {
  id: Located<string>
  name: Words
  group: HazardGroup
  origin: Words
  areas: readonly Located<string>[]
  tags: readonly Located<string>[]
  phases: readonly (typeof lifePhases)[number][]
  /** Ids of pages: `procedures/lift-chain`. Empty: it is met always. */
  tasks: readonly Located<string>[]
  message: { hazard: Words; consequence: Words; avoid: Words } | undefined
  /** Name of the standard caution that holds its message. */
  caution: Located<string> | undefined
  residual: WrittenHarm
  /** Where the risk that is left is stated. */
  residualPlace: Located<string>['place']
  builtIn: readonly Words[]
  user: readonly Words[]
  /** The smallest gap in mm that is left for a part of the body. */
  gap: { part: (typeof crushedParts)[number]; mm: Located<number> } | undefined
  assessment: Located<string>
  /** ISO 7010 codes, as written. */
  symbols: readonly Located<string>[]
  fits: readonly Located<string>[]
}

/** A protective device that stops the machine before a person reaches the danger. */
export interface Safeguard {
  tag: Located<string>
  /** Time from the approach to standstill in s, of device and machine together. */
  stopTimeS: number
  /** From the device to the nearest danger. */
  distanceMm: Located<number>
  /** What else its least distance depends on: the resolution in mm of a light curtain. */
  device: { kind: 'light-curtain'; resolutionMm: number } | { kind: 'two-hand-control'; covered: boolean } | { kind: 'pressure-mat' }
  fits: readonly Located<string>[]
}

/** Severity and probabilities as an author states them. */
export interface WrittenHarm {
  severity: (typeof severities)[number] | undefined
  accident: (typeof probabilities)[number] | undefined
  injury: (typeof probabilities)[number] | undefined
}

export interface StatedHarm {
  severity: (typeof severities)[number]
  accident: (typeof probabilities)[number]
  injury: (typeof probabilities)[number]
}

/** The harm that is stated; undefined where what decides the signal word is missing. */
export function statedHarm({ severity, accident, injury }: WrittenHarm): StatedHarm | undefined {
  if (severity === undefined) return undefined
  if (severity !== 'death-or-serious-injury') return { severity, accident: accident ?? 'could', injury: injury ?? 'could' }
  return accident && injury ? { severity, accident, injury } : undefined
}
