import type { FaultId } from '../fault/row.ts'
import type { SeenStates } from '../fault/seen-state.ts'
import type { SignalWords } from './words.ts'

/** Of which device a row is told. */
export interface ToldOf {
  /** What its states are to a reader, where they are no target. */
  seen?: SeenStates | undefined
  /** It keeps people safe: readings that are right approve nothing. */
  isSafetyDevice?: boolean | undefined
}

/** A row of the fault table in words: what has no target before it is told as what it is. */
export function faultWords(words: SignalWords, id: FaultId, { seen, isSafetyDevice }: ToldOf): { diagnosis: string; nextStep: string } {
  if (id === 'healthy' && isSafetyDevice) return words.healthySafety
  if (seen && id === 'never-senses') return words.stuck[seen.none]
  return seen && id === 'always-senses' ? words.stuck[seen.target] : words.faults[id]
}
