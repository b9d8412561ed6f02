import type { Observation } from '../../signals/fault/diagnose.ts'
import type { Indicator, Light } from '../../signals/fault/row.ts'

/** What a light is seen to do, in the words of the buttons. */
export type LightPattern = 'with' | 'never' | 'always' | 'without' | 'unsteady-with' | 'unsteady-without'
export const lightPatterns: readonly LightPattern[] = ['with', 'never', 'always', 'without', 'unsteady-with', 'unsteady-without']

/** Of what is seen in one state only, nothing is said of the other. */
const shown: Readonly<Record<LightPattern, { target?: Light; none?: Light }>> = {
  with: { target: 'lit', none: 'dark' },
  never: { target: 'dark', none: 'dark' },
  always: { target: 'lit', none: 'lit' },
  without: { target: 'dark', none: 'lit' },
  'unsteady-with': { target: 'unsteady' },
  'unsteady-without': { none: 'unsteady' },
}

export function isLightPattern(text: unknown): text is LightPattern {
  return lightPatterns.some((pattern) => pattern === text)
}

/** What was tapped as the fault table takes it. */
export function observationsOf(indicator: Indicator, pattern: LightPattern): Observation[] {
  const { target, none } = shown[pattern]
  return [
    ...(target ? [{ state: 'target', indicator, shows: target } as const] : []),
    ...(none ? [{ state: 'none', indicator, shows: none } as const] : []),
  ]
}

/** The pattern of a light that shows this with a target and without. */
export function patternOf(target: Light | undefined, none: Light | undefined): LightPattern | undefined {
  return lightPatterns.find((pattern) => shown[pattern].target === target && shown[pattern].none === none)
}
