import { z } from 'zod'
import { fits, identifier, quantity, words } from './common.ts'

/** Forms of energy and the letter that marks their isolation points. */
export const energyForms = {
  electrical: 'E',
  pneumatic: 'P',
  hydraulic: 'H',
  water: 'W',
  gravity: 'G',
  thermal: 'T',
  chemical: 'C',
  rotating: 'R',
  spring: 'S',
} as const
export type EnergyForm = keyof typeof energyForms

const isolation = z.strictObject({
  point: identifier.describe('Number of the isolation point on the machine: E1, P1'),
  tag: identifier.describe('The device that is operated. Never a push button, selector, emergency stop or interlock'),
  safe: words.describe('Position that isolates: OFF, CLOSED, PIN IN'),
  place: words.describe('Where it is'),
  hardware: words.describe('Lock, hasp, valve cover, block'),
  lockable: z.boolean().describe('Takes a padlock'),
})

const source = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  form: z.enum(['electrical', 'pneumatic', 'hydraulic', 'water', 'gravity', 'thermal', 'chemical', 'rotating', 'spring']),
  name: words,
  magnitude: z.array(quantity).min(1).describe('One or more quantities: 400 V; 6 bar; 180 kg and 1400 mm'),
  areas: z.array(identifier).min(1).describe('Areas of the machine that it can reach'),
  hazard: words.describe('What it can do to a person'),
  isolation: z.array(isolation).describe('Devices that cut it off'),
  stored: z.boolean().describe('Energy remains after isolation'),
  reaccumulates: z.boolean().optional().describe('Can build up again while locked out'),
  dissipate: words.optional().describe('How to release or restrain what remains'),
  waitS: z.number().positive().optional().describe('Waiting time in seconds, from the data sheet or measured'),
  waitBasis: words.optional().describe('Where the waiting time comes from'),
  verify: z.strictObject({
    method: words.describe('How to prove that it is gone'),
    expect: words.describe('Reading or state that proves it'),
    tags: z.array(identifier).optional().describe('Gauges and test points used'),
  }),
  fits: fits.optional(),
})

/** The schema of `energy.yaml`. */
export const energyFile = z.strictObject({ sources: z.array(source) })
export type EnergySourceInput = z.infer<typeof source>
