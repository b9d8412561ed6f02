import type { TargetState } from './row.ts'

/** What a reader sees where there is no target. */
export type SeenState = 'actuated' | 'at rest' | 'guard open' | 'guard closed' | 'field free' | 'field interrupted' | 'pulse' | 'between pulses'
export type SeenStates = Readonly<Record<TargetState, SeenState>>
