import type { NotComputed } from '../law/law.ts'

export const surfaces = ['bare-metal', 'coated-metal', 'ceramic', 'plastic', 'wood'] as const
export type Surface = (typeof surfaces)[number]

const minS = 60
const tenMinS = 600
const eightHoursS = 28_800

/** At 1 minute. Source: ISO 13732-1. Coated metal and ceramic are left out: no text at hand confirms their values. */
const afterMinuteC: Readonly<Partial<Record<Surface, number>>> = { 'bare-metal': 51, plastic: 60, wood: 60 }

/**
 * Temperature in °C from which a surface burns after a contact of so many seconds. Source: ISO 13732-1, only where
 * two texts agree: 1 min, 10 min and 8 h or longer, without anything between. Elsewhere the author states a limit.
 */
export function burnThresholdC(surface: Surface, contactS: number): number | undefined {
  if (contactS >= eightHoursS) return 43
  if (contactS === tenMinS) return 48
  return contactS === minS ? afterMinuteC[surface] : undefined
}

/**
 * Whether a surface at a temperature burns. For bare metal and 1 s the edge of the band is known above (70 °C, EN 563
 * figure 2) and in doubt below, so a lower temperature is not judged.
 */
export function burns(surface: Surface, contactS: number, temperatureC: number): boolean | NotComputed {
  const threshold = burnThresholdC(surface, contactS)
  if (threshold !== undefined) return temperatureC >= threshold
  if (surface === 'bare-metal' && contactS === 1 && temperatureC >= 70) return true
  return { notComputed: ['harmlessAt'] }
}
