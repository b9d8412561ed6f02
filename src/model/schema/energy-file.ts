import { z } from 'zod'
import { fits, identifier, quantity, words } from './common.ts'
import { store } from './store.ts'

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

/**
 * Kinds of energy-isolating devices. Push buttons, selectors, emergency stops, outputs of a controller and
 * interlocks are none. Source: 29 CFR 1910.147(b), "energy isolating device".
 */
export const isolatingDevices = [
  'disconnect-switch',
  'circuit-breaker',
  'plug',
  'line-valve',
  'exhaust-valve',
  'blank',
  'block',
  'pin',
  'coupling',
] as const

const tagOut = z.strictObject({
  at: words.describe('Where the tag hangs, as near to the device as is safe'),
  reason: words.describe('Why no lock hangs here'),
  additional: words.optional().describe('The further means beside the tag: valve handle removed, fuse taken out, second disconnect open'),
  proof: words.optional().describe('How the employer has shown that tag and further means protect as well as a lock'),
  fasteningN: z.number().positive().describe('Unlocking strength of what fastens the tag, in newton'),
})

const point = z.strictObject({
  point: identifier.describe('Number of the isolation point on the machine: E1, P1'),
  tag: identifier.describe('The device that is operated. Never a push button, selector, emergency stop or interlock'),
  device: z.enum(isolatingDevices).describe('Kind of energy-isolating device'),
  safe: words.describe('Position that isolates: OFF, CLOSED, PIN IN'),
  service: words.describe('Position in service: ON, OPEN, PIN PARKED'),
  place: words.describe('Where it is'),
  hardware: words.describe('Lock, hasp, valve cover, block'),
  lockable: z.boolean().describe('Takes a padlock'),
  tagOut: tagOut.optional().describe('A tag in place of a lock'),
  fits: fits.optional(),
})

/** Ways to prove that an energy is gone. A try-out alone proves nothing about exposed conductors. */
export const proofs = ['voltage-test', 'try-out', 'gauge', 'thermometer', 'sight', 'by-hand', 'chemical-test', 'gas-test'] as const

const source = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
    form: z.enum(['electrical', 'pneumatic', 'hydraulic', 'water', 'gravity', 'thermal', 'chemical', 'rotating', 'spring']),
    name: words,
    magnitude: z.array(quantity).min(1).describe('One or more quantities: 400 V; 6 bar; 180 kg and 1400 mm'),
    areas: z.array(identifier).min(1).describe('Areas of the machine that it can reach'),
    hazard: words.describe('What it can do to a person'),
    hazards: z
      .array(identifier)
      .min(1)
      .optional()
      .describe('Hazards of hazards.yaml that it brings: each lockout that cuts it off shows a message about each'),
    from: identifier.optional().describe('The source that feeds this one, where it is a branch with an isolating device of its own'),
    isolation: z.array(identifier).describe('Numbers of the points that cut it off'),
    stored: z.boolean().describe('Energy remains after isolation'),
    store: z
      .array(store)
      .min(1)
      .refine((stores) => new Set(stores.map(({ kind }) => kind)).size === 1, {
        params: { wants: 'mixes kinds of stores', help: 'write a source for each kind: each has its own release and proof' },
      })
      .optional()
      .describe('What holds the energy, for the computed energy and waiting time; of several, such as drives, the slowest counts'),
    delayNoticeS: z.number().positive().optional().describe('Time in seconds on the notice at the enclosure: how long to wait before it is opened'),
    reaccumulates: z.boolean().optional().describe('Can build up again while locked out'),
    watch: words.optional().describe('How it is kept in view until the work is done: a gauge, an open vent, the proof again every so many minutes'),
    dissipate: words.optional().describe('How to release or restrain what remains'),
    waitS: z.number().positive().optional().describe('Waiting time in seconds, from the data sheet or measured'),
    waitBasis: words.optional().describe('Where the waiting time comes from'),
    verify: z
      .strictObject({
        by: z.array(z.enum(proofs)).min(1).describe('Ways of the proof'),
        method: words.describe('How to prove that it is gone'),
        expect: words.describe('Reading or state that proves it'),
        noVoltageTest: words
          .optional()
          .describe('Of an electrical source: why no work under it exposes a conductor, so that a try-out alone proves it'),
        tags: z.array(identifier).optional().describe('Gauges and test points used'),
      })
      .refine(({ by, noVoltageTest }) => !noVoltageTest || !by.includes('voltage-test'), {
        path: ['noVoltageTest'],
        params: { wants: 'stands beside `voltage-test`', help: 'keep one of them' },
      }),
    fits: fits.optional(),
  })
  .refine(({ watch, reaccumulates }) => !watch || reaccumulates === true, {
    path: ['watch'],
    params: { wants: 'stands without `reaccumulates: true`', help: 'write `reaccumulates: true`, or take `watch` out' },
  })

/** The schema of `energy.yaml`. */
export const energyFile = z.strictObject({
  points: z.array(point).describe('Isolation points of the machine, each once'),
  sources: z.array(source),
})
export type IsolatingDevice = (typeof isolatingDevices)[number]
export type Proof = (typeof proofs)[number]
export type EnergySourceInput = z.infer<typeof source>
