/**
 * What has to hold where a job is done without the lockout that would stand above it. All of it, or nothing:
 * one condition that fails takes the claim with it.
 */
export const conditions = {
  /** No written procedure for a lockout. Source: 29 CFR 1910.147(c)(4)(i), note, 1 to 8. */
  'one-lock': {
    noStoredEnergy: 'no energy is stored, is left after the isolation or builds up again, that could hurt someone',
    oneSource: 'one source holds all the energy, and it is easy to find and to isolate',
    lockDeenergises: 'isolating and locking this source takes all energy from the machine',
    lockedDuringWork: 'the source is isolated and locked during the work',
    oneLock: 'a single lock is enough',
    lockInOwnControl: 'only the authorised person who does the work can take the lock off',
    noHazardToOthers: 'the work makes no hazard for other people',
    noEarlierAccident: 'there has been no accident through an unexpected start during work on this machine',
  },
  /** Minor servicing during production. Source: 29 CFR 1910.147(a)(2)(ii), note. */
  'minor-servicing': {
    duringProduction: 'it is a small change, adjustment or the like during normal production',
    routine: 'it is routine',
    repetitive: 'it comes back again and again',
    integral: 'production cannot go on without it',
    otherProtection: 'other measures protect the person effectively',
  },
} as const

export type Ground = keyof typeof conditions
export type Condition<G extends Ground = Ground> = G extends Ground ? keyof (typeof conditions)[G] : never
export type Answer = 'yes' | 'no'

/** An answer to each condition of one ground. */
export type LockoutClaim = { [G in Ground]: { because: G } & Readonly<Record<Condition<G>, Answer>> }[Ground]

/** The conditions that a claim answers, in the order of their source, with what each says. */
export function conditionsOf({ because }: Pick<LockoutClaim, 'because'>): { condition: Condition; says: string }[] {
  return Object.entries(conditions[because]).map(([condition, says]) => ({ condition: condition as Condition, says }))
}

/** The conditions that do not hold, in the order of their source: the claim stands where there are none. */
export function failingConditions(claim: LockoutClaim): { condition: Condition; says: string }[] {
  const answers: Readonly<Record<string, string>> = claim
  return conditionsOf(claim).filter(({ condition }) => answers[condition] !== 'yes')
}
