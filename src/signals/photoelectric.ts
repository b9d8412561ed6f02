import type { Result, Stated } from '../law/law.ts'
import { type Given, law } from './law.ts'
import type { Refused } from './refusals.ts'

export type PhotoelectricKind = 'through-beam' | 'retro-reflective' | 'diffuse'
/** `light`: on with light on the receiver. `dark`: on without. */
export type OperateMode = 'light' | 'dark'

/** Whether the output is on. In doubt the mode, and not NO or NC, says it. Source: definition of light and dark operate. */
export function photoelectricOutput(kind: PhotoelectricKind, mode: OperateMode, objectPresent: boolean): 'on' | 'off' {
  const light = kind === 'diffuse' ? objectPresent : !objectPresent
  return light === (mode === 'light') ? 'on' : 'off'
}

/** Least excess gain for an air. The first is found in guidelines, the others are from memory. */
export const neededGain = {
  'clean air': { value: 1.5, basis: 'generic' },
  'slightly dirty': { value: 5, basis: 'generic', fromMemory: true },
  'moderately dirty': { value: 10, basis: 'generic', fromMemory: true },
  'very dirty': { value: 50, basis: 'generic', fromMemory: true },
} as const satisfies Record<string, Stated>

const throughBeamGain = law({
  formula: 'g = (d₁/d)²',
  unit: '1',
  inputs: ['ratedRangeM', 'rangeM'],
  value: ({ ratedRangeM, rangeM }) => (ratedRangeM / rangeM) ** 2,
})

/** How many times the light that is needed arrives, in clean air and far from the lens. Only a through-beam has a law. */
export function excessGain(kind: PhotoelectricKind, given: Given<'ratedRangeM' | 'rangeM'>): Result | Refused {
  if (kind === 'through-beam') return throughBeamGain(given)
  return { refused: kind === 'diffuse' ? 'diffuse-gain' : 'retro-reflective-gain' }
}

/** Range in m at which a through-beam still has an excess gain. */
export const usableRange = law({
  formula: 'd = d₁/√g',
  unit: 'm',
  inputs: ['ratedRangeM', 'excessGain'],
  value: ({ ratedRangeM, excessGain }) => ratedRangeM / Math.sqrt(excessGain),
})

/** Excess gain that two soiled lenses need, from the light that each lets through. */
export const gainForSoiledLenses = law({
  formula: 'g = 1/(T₁·T₂)',
  unit: '1',
  inputs: ['firstTransmission', 'secondTransmission'],
  value: ({ firstTransmission, secondTransmission }) => 1 / (firstTransmission * secondTransmission),
})

/** The white card for which data sheets draw the curves of diffuse sensors. */
export const whiteReflectance: Stated = { value: 0.9, basis: 'generic', source: 'curves of data sheets' }

/** Excess gain on a target, from that which the curve of a diffuse sensor gives on its white card. */
export const gainOnTarget = law({
  formula: 'g₁ = g·ρ/ρ₀',
  unit: '1',
  inputs: ['excessGain', 'reflectance', 'referenceReflectance'],
  value: ({ excessGain, reflectance, referenceReflectance }) => (excessGain * reflectance) / referenceReflectance,
})

const timing = ['objectSpeedMPerS', 'responseMs', 'filterMs', 'scanMs', 'beamWidthMm'] as const

/**
 * Least length of an object, or of a gap, in mm that the controller sees: `response` to light for the one, to dark
 * for the other. `beamWidth` is 0 where a part of the beam already switches.
 */
export const leastObjectLength = law({
  formula: 'L = v·(tₛ + t_f + t_c) + w',
  unit: 'mm',
  inputs: timing,
  value: ({ objectSpeedMPerS, responseMs, filterMs, scanMs, beamWidthMm }) => objectSpeedMPerS * (responseMs + filterMs + scanMs) + beamWidthMm,
})

/** The most objects in Hz that an output follows. */
export const highestObjectRate = law({
  formula: 'f = 1000/(t₁ + t₂)',
  unit: 'Hz',
  inputs: ['onMs', 'offMs'],
  value: ({ onMs, offMs }) => 1000 / (onMs + offMs),
})
