/** The phases of a lockout, in the one order that they may have. Source: 29 CFR 1910.147(d) and (e). */
export const lockoutPhases = ['prepare', 'notify', 'shut-down', 'isolate', 'lock', 'dissipate', 'verify', 'work', 'release'] as const
export type LockoutPhase = (typeof lockoutPhases)[number]

/**
 * The parts of a lockout that take steps of an author. `restore` is the end of the release: what is done after
 * the locks are off and the people are told.
 */
export const writtenPhases = [...lockoutPhases, 'restore'] as const
export type WrittenPhase = (typeof writtenPhases)[number]

/** What a step of an author may stand for in a part, in place of the step that would be composed. */
export const claimedBy: Readonly<Partial<Record<WrittenPhase, 'point' | 'source'>>> = {
  isolate: 'point',
  lock: 'point',
  dissipate: 'source',
  verify: 'source',
  restore: 'point',
}

/** Ids of the headings that the page of a lockout has besides those of its author. */
export const composedAnchors = [...lockoutPhases, 'power-in-between', 'group-and-shift'] as const
