import { z } from 'zod'
import { identifier } from './common.ts'

const holds = (condition: string) => z.enum(['yes', 'no']).describe(`Whether ${condition}`)

/**
 * Why a job needs no lockout, or no written one: the answer to each condition. The claim stands only where all hold.
 * Sources: 29 CFR 1910.147(c)(4)(i), note, and (a)(2)(ii), note.
 */
export const withoutLockout = z
  .discriminatedUnion('because', [
    z.strictObject({
      because: z.literal('one-lock').describe('One lock on one source makes the work safe, and no written lockout is needed'),
      energy: identifier.describe('The one source: an id of energy.yaml'),
      noStoredEnergy: holds('no energy is stored, left over or building up again'),
      oneSource: holds('there is a single source, easy to find and to isolate'),
      lockDeenergises: holds('isolating and locking it takes all energy away'),
      lockedDuringWork: holds('it is isolated and locked during the work'),
      oneLock: holds('a single lock is enough'),
      lockInOwnControl: holds('only the authorised person who does the work can take the lock off'),
      noHazardToOthers: holds('the work makes no hazard for others'),
      noEarlierAccident: holds('there has been no accident through an unexpected start during such work'),
    }),
    z.strictObject({
      because: z.literal('minor-servicing').describe('A small job during normal production, under other protection'),
      duringProduction: holds('it is a small change or adjustment during normal production'),
      routine: holds('it is routine'),
      repetitive: holds('it comes back again and again'),
      integral: holds('production cannot go on without it'),
      otherProtection: holds('other measures protect effectively'),
      protectedBy: z.array(identifier).min(1).optional().describe('Tags of the devices that protect instead; needed where other protection holds'),
    }),
  ])
  .describe('Why no lockout is named: each condition answered yes or no')
export type WithoutLockout = z.infer<typeof withoutLockout>
