import { z } from 'zod'

/**
 * An identifier (tag, part number, drawing number, revision, serial). Always text: leading zeros and
 * `1.10` are part of the name, so a bare YAML number is refused and must be put in quotes.
 */
export const identifier = z
  .string()
  .min(1)
  .regex(/^\S(.*\S)?$/, 'starts or ends with a space')

/** Text in the source language alone, or in several languages: `Lift` or `{ en: Lift, es: Elevador }`. */
export const words = z.union([z.string().min(1), z.record(z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/), z.string().min(1))])
export type WordsInput = z.infer<typeof words>

/** Names of machine options; the record or page is kept when one of them is fitted. Empty or absent: always kept. */
export const fits = z.array(identifier).describe('Options for which this is kept; without it, it is kept always')

/** A physical quantity as an author writes it: `{ value: 6, unit: bar }`. */
export const quantity = z.strictObject({
  value: z.number().describe('Magnitude in the given unit'),
  unit: z.string().min(1).describe('Unit, for example V, bar, kg, °C, mm, J'),
})

/** Whom a page addresses; each reader has a reading limit in machine.yaml. */
export const reader = z.enum(['operator', 'maintenance', 'engineer'])
export type Reader = z.infer<typeof reader>

/** The sensing or acting principle, which decides what should be measured and which lessons fit. */
export const technologies = [
  'inductive',
  'capacitive',
  'namur',
  'photoelectric-through-beam',
  'photoelectric-retro-reflective',
  'photoelectric-diffuse',
  'magnetic-cylinder-switch',
  'limit-switch',
  'pressure-switch',
  'float-switch',
  'flow-switch',
  'temperature-switch',
  'current-loop',
  'voltage-signal',
  'pt100',
  'thermocouple',
  'thermistor',
  'pulse-flow',
  'encoder',
  'safety-interlock',
  'emergency-stop',
  'light-curtain',
  'push-button',
  'selector-switch',
  'solenoid-valve',
  'manual-valve',
  'cylinder',
  'contactor',
  'motor',
  'drive',
  'heater',
  'lamp',
  'isolator',
  'power-supply',
  'controller',
  'vessel',
] as const
export const technology = z.enum(technologies)
export type Technology = z.infer<typeof technology>

/** Technologies that measure something or see it: a lesson can tell how their signal is checked. Safety devices are not among them: their test is the employer's. */
export const sensing: ReadonlySet<Technology> = new Set([
  'inductive',
  'capacitive',
  'namur',
  'photoelectric-through-beam',
  'photoelectric-retro-reflective',
  'photoelectric-diffuse',
  'magnetic-cylinder-switch',
  'limit-switch',
  'pressure-switch',
  'float-switch',
  'flow-switch',
  'temperature-switch',
  'current-loop',
  'voltage-signal',
  'pt100',
  'thermocouple',
  'thermistor',
  'pulse-flow',
  'encoder',
] as const)
