import { z } from 'zod'
import { fits, identifier, words } from './common.ts'

/** Groups of hazards. Source: ISO 12100, table B.1. */
export const hazardGroups = [
  'mechanical',
  'electrical',
  'thermal',
  'noise',
  'vibration',
  'radiation',
  'substance',
  'ergonomic',
  'environment',
  'combination',
] as const
export type HazardGroup = (typeof hazardGroups)[number]

/** Phases in the life of a machine. Source: ISO 12100, table B.3, in its manner. */
export const lifePhases = ['transport', 'installation', 'setting', 'operation', 'cleaning', 'maintenance', 'fault-finding', 'dismantling'] as const

export const severities = ['death-or-serious-injury', 'minor-or-moderate-injury', 'property-damage'] as const
export const probabilities = ['will', 'could'] as const

/** Parts of the body that a gap can crush. Source: ISO 13854, table 1. */
export const crushedParts = ['body', 'head', 'leg', 'foot', 'toes', 'arm', 'hand', 'finger'] as const

const stop = {
  tag: identifier.describe('The protective device'),
  stopTimeS: z.number().positive().describe('From the approach to standstill, device and machine together, as last measured'),
  distanceMm: z.number().positive().describe('From the device to the nearest danger'),
  fits: fits.optional(),
}
const safeguard = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('light-curtain'),
    ...stop,
    resolutionMm: z.number().positive().max(70).describe('Smallest thing that the curtain is sure to notice'),
  }),
  z.strictObject({
    kind: z.literal('two-hand-control'),
    ...stop,
    covered: z.boolean().optional().describe('Covers keep everything but the hands from the buttons'),
  }),
  z.strictObject({ kind: z.literal('pressure-mat'), ...stop }),
])

const hazard = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    .describe('Name by which pages refer to it: <Safety hazard="…" />'),
  name: words.describe('Heading in the collected safety chapter: Falling carriage'),
  group: z.enum(hazardGroups).describe('Group of hazards of ISO 12100, table B.1'),
  origin: words.describe('What it comes from: the raised carriage of the lift'),
  areas: z.array(identifier).min(1).describe('Areas of the machine where it is'),
  tags: z.array(identifier).optional().describe('Devices that it comes from'),
  phases: z.array(z.enum(lifePhases)).min(1).describe('Phases of life in which people meet it'),
  tasks: z
    .array(identifier)
    .optional()
    .describe('Pages whose task meets it: procedures/lift-chain. Each must show a message about it. Without it, it is met always'),
  message: z
    .strictObject({
      hazard: words.describe('Nature of the hazard'),
      consequence: words.describe('What will or could happen'),
      avoid: words.describe('How to avoid it'),
    })
    .optional()
    .describe('Texts of its safety message'),
  caution: identifier.optional().describe('Standard caution whose message speaks of it, instead of `message`'),
  residual: z
    .strictObject({
      severity: z.enum(severities).describe('Worst credible harm with every built-in measure in place'),
      accident: z.enum(probabilities).optional().describe('Does an accident happen if it is not avoided; needed for death or serious injury'),
      injury: z.enum(probabilities).optional().describe('Does the accident cause death or serious injury; needed for it'),
    })
    .describe('Risk that is left, from which the signal word follows'),
  builtIn: z.array(words).describe('Measures that the builder has taken; empty where there is none'),
  user: z.array(words).min(1).describe('Measures that the user must take'),
  assessment: identifier.describe('Where it stands in the risk assessment: RA-400 no. 12'),
  gap: z
    .strictObject({
      part: z.enum(crushedParts).describe('Part of the body that reaches into it; a hand is also wrist and fist'),
      mm: z.number().positive().describe('Smallest width that is left'),
    })
    .optional()
    .describe('Where a gap keeps parts from crushing people: how wide it stays'),
  symbols: z.array(identifier).optional().describe('ISO 7010 codes of the signs beside its message: W012'),
  fits: fits.optional(),
})

/** The schema of `hazards.yaml`: each hazard of the risk assessment that leaves a risk, once, and the distances of protective devices. */
export const hazardsFile = z.strictObject({
  hazards: z.array(hazard),
  safeguards: z.array(safeguard).optional().describe('Protective devices that stop the machine before a person reaches the danger'),
})
export type SafeguardInput = z.infer<typeof safeguard>
export type HazardInput = z.infer<typeof hazard>
