import type { ByConduction, Light, RowSpec } from './row.ts'

export const both = <T>(it: T): ByConduction<T> => [it, it]

export const follows: ByConduction<readonly Light[]> = [['lit'], ['dark']]
export const dark: ByConduction<readonly Light[]> = both(['dark'])
export const lit: ByConduction<readonly Light[]> = both(['lit'])
/** What a signal that is too weak, and one that may be, leave of a light. */
export const weakLight: ByConduction<readonly Light[]> = [['dark', 'unsteady'], ['dark']]
export const anyLight: ByConduction<readonly Light[]> = [['dark', 'unsteady', 'lit'], ['dark']]

export const leakageLights = {
  'card-led': [['lit'], ['lit', 'unsteady']],
  tag: [['lit'], ['lit', 'unsteady']],
} satisfies RowSpec['lights']

/** What is wrong behind the terminal: all readings are good. */
export function cardRows(readings: RowSpec['readings'], sensor: RowSpec['lights']): RowSpec[] {
  const { 'input-at-card': _, 'input-to-cabinet': __, ...before } = readings
  // The channel shows what the other sensor does.
  const strayed: ByConduction<readonly Light[]> = both(['dark', 'lit'])
  return [
    { id: 'card-channel-failed', weight: 1, suspected: 'card', readings, lights: { ...sensor, 'card-led': dark, tag: dark } },
    { id: 'tag-stays-off', weight: 3, suspected: 'address', readings, lights: { ...sensor, 'card-led': follows, tag: dark } },
    { id: 'tag-stays-on', weight: 2, suspected: 'address', readings, lights: { ...sensor, 'card-led': follows, tag: lit } },
    {
      id: 'cores-swapped',
      weight: 1,
      suspected: 'terminal',
      readings: before,
      lights: { ...sensor, 'card-led': strayed, tag: strayed, 'other-led': follows },
    },
  ]
}
