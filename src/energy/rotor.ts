import { law } from './law.ts'

/** Energy in joule of a turning mass. */
export const rotorEnergy = law({
  formula: 'E = I·ω²/2',
  unit: 'J',
  inputs: ['momentOfInertiaKgM2', 'speedRadPerS'],
  value: ({ momentOfInertiaKgM2, speedRadPerS }) => (momentOfInertiaKgM2 * speedRadPerS ** 2) / 2,
})

/** Moment of inertia in kg·m² of a full disc about its axis. */
export const discInertia = law({
  formula: 'I = m·r²/2',
  unit: 'kg·m²',
  inputs: ['massKg', 'radiusM'],
  value: ({ massKg, radiusM }) => (massKg * radiusM ** 2) / 2,
})
