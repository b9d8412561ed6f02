import type { ContactSense } from './circuit.ts'
import type { Level } from './level.ts'
import type { ByConduction, Light, RowSpec } from './row.ts'
import { both, dark, follows, lit } from './row-parts.ts'

const inverted: ByConduction<readonly Light[]> = [follows[1], follows[0]]

/**
 * An inductive NAMUR switch on its amplifier; here the amplifier's output is what conducts. `contact`: `NO` is on
 * with a target, which is when little current flows. Source: IEC 60947-5-6.
 */
export function namurRows(contact: ContactSense): RowSpec[] {
  const [withTarget, without]: readonly [Level, Level] = ['high-impedance', 'low-impedance']
  const current: ByConduction<Level> = contact === 'NO' ? [withTarget, without] : [without, withTarget]
  const good = { 'loop-current': current } satisfies RowSpec['readings']
  const quiet = { 'fault-led': dark }
  const all = { ...quiet, 'card-led': follows, tag: follows }
  return [
    { id: 'healthy', weight: 10, readings: good, lights: all },
    { id: 'signal-open', weight: 6, suspected: 'signal-wire', readings: { 'loop-current': both('line-break') }, lights: { 'fault-led': lit } },
    { id: 'line-shorted', weight: 3, suspected: 'signal-wire', readings: { 'loop-current': both('line-short') }, lights: { 'fault-led': lit } },
    {
      id: 'amplifier-without-supply',
      weight: 3,
      suspected: 'supply',
      readings: { 'loop-current': both('line-break') },
      lights: { 'fault-led': dark, 'card-led': dark, tag: dark },
    },
    { id: 'never-senses', weight: 5, suspected: 'target', readings: good, lights: all },
    { id: 'always-senses', weight: 3, suspected: 'target', readings: good, lights: all },
    {
      id: 'no-state',
      weight: 2,
      suspected: 'target',
      readings: { 'loop-current': contact === 'NO' ? ['namur-between', undefined] : [undefined, 'namur-between'] },
      lights: quiet,
    },
    {
      id: 'amplifier-inverted',
      weight: 2,
      suspected: 'card',
      readings: good,
      lights: { ...quiet, 'card-led': inverted, tag: inverted },
    },
    { id: 'card-channel-failed', weight: 1, suspected: 'card', readings: good, lights: { ...quiet, 'card-led': dark, tag: dark } },
    { id: 'tag-stays-off', weight: 3, suspected: 'address', readings: good, lights: { ...quiet, 'card-led': follows, tag: dark } },
    { id: 'tag-stays-on', weight: 2, suspected: 'address', readings: good, lights: { ...quiet, 'card-led': follows, tag: lit } },
  ]
}
