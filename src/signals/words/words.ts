import type { CauseId } from '../fault/cause.ts'
import type { Level } from '../fault/level.ts'
import type { FaultId, Indicator, Light, Point, Stretch, TargetState } from '../fault/row.ts'
import type { SeenState } from '../fault/seen-state.ts'
import type { UnreadReason } from '../read-quantity.ts'
import type { RefusalId } from '../refusals.ts'
import { en } from './en.ts'
import { es } from './es.ts'

/** Everything that `signals/` says to a reader, in one language. */
export interface SignalWords {
  faults: Readonly<Record<FaultId, { diagnosis: string; nextStep: string }>>
  causes: Readonly<Record<CauseId, { diagnosis: string; nextStep: string }>>
  /** What is said of a load, an encoder or a flow meter that has none of them. */
  healthy: Readonly<Record<'output' | 'encoder' | 'flow', { diagnosis: string; nextStep: string }>>
  /** The same of a safety device, whose readings approve nothing. */
  healthySafety: { diagnosis: string; nextStep: string }
  /** It shows this state all the time, whatever there is to see. */
  stuck: Readonly<Record<SeenState, { diagnosis: string; nextStep: string }>>
  stretches: Readonly<Record<Stretch, string>>
  points: Readonly<Record<Point, string>>
  indicators: Readonly<Record<Indicator, string>>
  lights: Readonly<Record<Light, string>>
  /** What stands in the place of a target. */
  seen: Readonly<Record<SeenState, string>>
  states: Readonly<Record<TargetState, string>>
  levels: Readonly<Record<Level, string>>
  refusals: Readonly<Record<RefusalId, string>>
  unread: Readonly<Record<UnreadReason, string>>
}

const tables = new Map<string, SignalWords>([
  ['en', en],
  ['es', es],
])

/** The words of a language; undefined for one without a table. */
export const signalWords = (language: string): SignalWords | undefined => tables.get(language)

export const languagesWithSignalWords: readonly string[] = [...tables.keys()]
