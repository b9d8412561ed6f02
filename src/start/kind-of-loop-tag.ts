import { type Designation, isaLegendOf } from '../model/designation.ts'
import { parseIsa51 } from '../model/isa51.ts'
import { functions, type IsaMeaning } from '../model/isa51-letters.ts'

const nouns: Partial<Record<IsaMeaning, string>> = {
  control: 'controller',
  'primary-element': 'sensor',
  gauge: 'gauge',
  indicate: 'indicator',
  light: 'light',
  record: 'recorder',
  switch: 'switch',
  transmit: 'transmitter',
  valve: 'valve',
  compute: 'relay',
  driver: 'actuator',
}

/** What a loop tag says that the device is, to begin with: `differential pressure switch`. Undefined where it does not say. */
export function kindOfLoopTag(tag: string, system: Designation): string | undefined {
  const legend = isaLegendOf(system)
  const read = legend && parseIsa51(tag, legend)
  if (!read || 'reason' in read) return undefined
  const [first, second] = read.letters
  if (typeof first?.means === 'object') return typeof first.means.own === 'string' ? first.means.own : undefined
  const noun = read.letters.flatMap(({ means }) => (typeof means === 'string' && nouns[means]) || []).at(-1)
  if (!first || noun === undefined || first.means === 'unclassified') return undefined
  const modifier = second && !Object.values<unknown>(functions).includes(second.means) ? second.means : undefined
  if (modifier === 'safety') return `${first.means} safety ${noun}`
  return `${modifier === 'differential' ? 'differential ' : ''}${first.means} ${noun}`
}
