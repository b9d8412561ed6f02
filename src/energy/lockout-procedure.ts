import type { LockoutPhase } from '../model/lockout-phases.ts'

/** A lockout procedure as plain values, as far as its completeness is judged. */
export interface Procedure {
  /** What the machine is and where it stands. */
  machine?: string
  purpose?: string
  scope?: string
  authorised?: string
  enforcement?: string
  /** Who places, removes and transfers locks, by role. */
  responsible?: string
  sources: readonly ProcedureSource[]
  points: readonly ProcedurePoint[]
  steps: readonly ProcedureStep[]
  /** Present where several people or crews work under it. */
  group?: { crews: number; responsible?: string; coordinator?: string; personalLocks: boolean }
  /** Work under it needs power in between, for a test or to position something. */
  needsPower?: boolean
  /** The procedure says how power is given and taken away again. Needed where `needsPower`. */
  testSequence?: boolean
  /** Year in which the machine was installed, majorly repaired or renovated. */
  year?: number
}

export interface ProcedureSource {
  id: string
  form?: string
  magnitudes: readonly { value: number; unit: string }[]
  hazard?: string
  points: readonly string[]
  stored: boolean
  reaccumulates: boolean
  /** How it is kept under watch where it can build up again. */
  recheck?: string
  /** How its absence is proved, and what must be seen. */
  method?: string
  expect?: string
  /** It is proved with a voltage tester. */
  voltageTest: boolean
}

export interface ProcedurePoint {
  id: string
  device?: string
  place?: string
  safe?: string
  hardware?: string
  lockable: boolean
  tagOut?: { at?: string; additional?: string; proof?: string; fasteningN: number }
}

export interface ProcedureStep {
  phase: LockoutPhase
  /** What the step does, where that is known: the acts of a composed sequence. */
  act?: string
  point?: string
  source?: string
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
