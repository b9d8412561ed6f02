import type { Indicator } from '../../../signals/fault/row.ts'
import { isLightPattern, type LightPattern } from '../../meter/light-pattern.ts'
import { load, save } from '../store.ts'

/** What was read and tapped. Readings are kept as typed, with their unit: `21,6 V`. */
export interface Kept {
  readings: Record<string, string>
  lights: Partial<Record<Indicator, LightPattern>>
  /** When the last change was made, in ms. */
  atMs: number
}

/** After this time readings are of another job: they are not restored. As with ticks. */
const keptForMs = 12 * 60 * 60 * 1000

export const nothingKept = (): Kept => ({ readings: {}, lights: {}, atMs: 0 })

export const isEmpty = ({ readings, lights }: Kept): boolean => Object.keys(readings).length + Object.keys(lights).length === 0

/** Readings belong to machine, serial, revision and device, whichever page they are entered on. */
export function keyOf(meter: HTMLElement): string {
  return ['fettle', document.documentElement.dataset.site, meter.dataset.revision, 'meter', meter.dataset.device].join('.')
}

export function restore(key: string, fieldIds: readonly string[], indicators: readonly Indicator[]): Kept {
  const found = parsed(load(key))
  const ageMs = Date.now() - found.atMs
  if (!(ageMs >= 0 && ageMs < keptForMs)) return nothingKept()
  const readings = fieldIds.flatMap((id) => {
    const text = found.readings[id]
    return typeof text === 'string' ? [[id, text] as const] : []
  })
  const lights = indicators.flatMap((indicator) => {
    const pattern = found.lights[indicator]
    return isLightPattern(pattern) ? [[indicator, pattern] as const] : []
  })
  return { readings: Object.fromEntries(readings), lights: Object.fromEntries(lights), atMs: found.atMs }
}

export function keep(key: string, kept: Kept): void {
  save(key, isEmpty(kept) ? undefined : JSON.stringify(kept))
}

function parsed(text: string | undefined): { readings: Record<string, unknown>; lights: Record<string, unknown>; atMs: number } {
  try {
    const { readings, lights, atMs } = JSON.parse(text ?? '{}')
    return { readings: { ...readings }, lights: { ...lights }, atMs: Number(atMs) }
  } catch {
    // What another program left under this key is not ours.
    return { readings: {}, lights: {}, atMs: Number.NaN }
  }
}
