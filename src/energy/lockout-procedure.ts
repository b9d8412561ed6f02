import type { LockoutPhase } from '../model/lockout-phases.ts'

/** A lockout procedure as plain values, as far as its completeness is judged. */
export interface Procedure {
  /** What the machine is and where it stands. */
  machine?: string | undefined
  purpose?: string | undefined
  scope?: string | undefined
  authorised?: string | undefined
  enforcement?: string | undefined
  /** Who places, removes and transfers locks, by role. */
  responsible?: string | undefined
  sources: readonly ProcedureSource[]
  points: readonly ProcedurePoint[]
  steps: readonly ProcedureStep[]
  /** Present where several people or crews work under it. */
  group?: { crews: number; responsible?: string | undefined; coordinator?: string | undefined; personalLocks: boolean } | undefined
  /** Work under it needs power in between, for a test or to position something. */
  needsPower?: boolean | undefined
  /** The procedure says how power is given and taken away again. Needed where `needsPower`. */
  testSequence?: boolean | undefined
  /** Year in which the machine was installed, majorly repaired or renovated. */
  year?: number | undefined
}

export interface ProcedureSource {
  id: string
  form?: string | undefined
  magnitudes: readonly { value: number; unit: string }[]
  hazard?: string | undefined
  points: readonly string[]
  stored: boolean
  reaccumulates: boolean
  /** How it is kept under watch where it can build up again. */
  recheck?: string | undefined
  /** How its absence is proved, and what must be seen. */
  method?: string | undefined
  expect?: string | undefined
  /** It is proved with a voltage tester. */
  voltageTest: boolean
  /** Why no work under it exposes a conductor, where that is said: then a try-out is enough. */
  noVoltageTest?: string | undefined
}

export interface ProcedurePoint {
  id: string
  device?: string | undefined
  place?: string | undefined
  safe?: string | undefined
  hardware?: string | undefined
  lockable: boolean
  tagOut?: { at?: string | undefined; additional?: string | undefined; proof?: string | undefined; fasteningN: number } | undefined
}

export interface ProcedureStep {
  phase: LockoutPhase
  /** What the step does, where that is known: the acts of a composed sequence. */
  act?: string | undefined
  point?: string | undefined
  source?: string | undefined
}

/** What a fault is about: a source, a point, or the procedure itself. */
export interface LockoutFault {
  /** Id of the rule in the order of the clauses: L05. */
  rule: string
  severity: 'error' | 'warning'
  message: string
  clause: string
  help: string
  source?: string
  point?: string
  /** Key of the frontmatter, or nothing for the procedure as a whole. */
  key?: 'purpose' | 'scope' | 'authorised' | 'enforcement' | 'responsible' | 'group' | 'needsPower' | 'machine'
}

/**
 * Makes faults about one thing, which begins their message where it has a name. A clause in brackets is one of
 * 29 CFR 1910.147.
 */
export function faultsOf(about: Pick<LockoutFault, 'source' | 'point' | 'key'>, name = '') {
  return (rule: string, message: string, clause: string, help: string, severity: LockoutFault['severity'] = 'error'): LockoutFault => ({
    rule,
    severity,
    message: `${name}${message}`,
    clause: clause.startsWith('(') ? `29 CFR 1910.147${clause}` : clause,
    help,
    ...about,
  })
}
