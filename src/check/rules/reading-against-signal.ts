import type { Signal } from '../../model/machine.ts'
import { scaleOf } from '../../model/unit-scale.ts'
import type { Problem } from '../../source/finding.ts'
import { readingAgainstRange } from '../reading-against-range.ts'
import { type ReadingPoint, readingPoints } from '../reading-points.ts'
import type { Rule } from '../rule.ts'

const electrical = new Set(['voltage', 'current', 'resistance', 'frequency'])
const onOff = new Set<Signal['type']['value']>(['DI', 'DO', 'SDI', 'SDO'])

export const readingAgainstSignal: Rule = {
  id: 'reading-against-signal',
  severity: 'warning',
  summary: 'A reading asks for a value that the signal of its device cannot have.',
  why: 'The technician waits for a value that never comes, and takes a good device for a broken one.',
  source: 'house rule; what is measured at which point is common practice',

  *check(machine, graph) {
    for (const points of readingPoints(machine, graph)) {
      const problems = points.map(contradiction)
      const [first] = problems
      // Where several devices may be meant, it must be wrong for each.
      if (!first || problems.some((problem) => !problem)) continue
      const others = points.slice(1).map(({ tag }) => `\`${tag}\``)
      yield others.length > 0 ? { ...first, note: `nor is it right for ${others.join(', ')}, which the step names too` } : first
    }
  },
}

/** At most one problem a reading: with a wrong unit its values say nothing. */
function contradiction(point: ReadingPoint): Problem | undefined {
  const { reading, tag, signals, alone } = point
  const at = reading.get('at')?.value ?? ''
  const unit = reading.get('unit')
  if (at === 'terminal' || at === 'pin') {
    const scale = unit && scaleOf(unit.value)
    if (!unit || !scale || electrical.has(scale.quantity)) return undefined
    return {
      message: `\`${unit.value}\` is no unit for a reading at a ${at}`,
      place: unit.place,
      related: signals.slice(0, 1).map(({ place }) => ({ label: `the signal of \`${tag}\``, place })),
      help: `write what a meter shows at the ${at}, or where else the value is read`,
    }
  }
  const [signal, other] = signals
  if (!signal || other) return undefined
  if (onOff.has(signal.type.value)) return againstOnOff(point, at, signal)
  // A gauge that has a tag of its own shows no signal.
  return at === 'screen' || (at === 'gauge' && alone) ? readingAgainstRange(reading, tag, signal) : undefined
}

/** A digital signal is 0 or 1, and a screen shows no value of it. */
function againstOnOff({ reading, tag, named }: ReadingPoint, at: string, { type }: Signal): Problem | undefined {
  const values = [reading.get('low'), reading.get('high')].flatMap((limit) => limit ?? [])
  const wrong = at === 'address' ? values.find(({ value }) => value !== '0' && value !== '1') : at === 'screen' && named ? values[0] : undefined
  if (!wrong) return undefined
  return {
    message: `\`${tag}\` is ${type.value} in the I/O list, on or off, and the reading is ${wrong.value}`,
    place: wrong.place,
    related: [{ label: 'its type', place: type.place }],
    help: 'write the state under `expect`, or name the device that measures the value',
  }
}
