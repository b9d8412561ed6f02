import type { Signal } from '../../model/machine.ts'
import { converted, scaleOf } from '../../model/unit-scale.ts'
import type { Problem } from '../../source/finding.ts'
import { type ReadingPoint, readingPoints } from '../reading-points.ts'
import type { Reading } from '../readings.ts'
import type { Rule } from '../rule.ts'

const electrical = new Set(['voltage', 'current', 'resistance', 'frequency'])
const onOff = new Set<Signal['type']['value']>(['DI', 'DO', 'SDI', 'SDO'])

export const readingAgainstSignal: Rule = {
  id: 'reading-against-signal',
  severity: 'warning',
  summary: 'A reading asks for a value that the signal of its device cannot have.',
  why: 'The technician waits for a value that never comes, and takes a good device for a broken one.',
  source: 'house rule; what is measured at which point is common practice',

  *check(machine) {
    for (const point of readingPoints(machine)) {
      const problem = contradiction(point)
      if (problem) yield problem
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
  return at === 'screen' || (at === 'gauge' && alone) ? againstRange(reading, tag, signal) : undefined
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

function againstRange(reading: Reading, tag: string, { low, high, unit }: Signal): Problem | undefined {
  const own = reading.get('unit')
  if (!own || !unit) return undefined
  const [asked, measured] = [scaleOf(own.value), scaleOf(unit.value)]
  if (asked && measured && asked.quantity !== measured.quantity) {
    return {
      message: `the reading is in \`${own.value}\`, and \`${tag}\` measures in \`${unit.value}\``,
      place: own.place,
      related: [{ label: 'its unit in the I/O list', place: unit.place }],
      help: 'correct the unit, or name the device that measures the value',
    }
  }
  if (!low || !high) return undefined
  for (const limit of [reading.get('low'), reading.get('high')]) {
    const value = limit && converted(Number(limit.value), own.value, unit.value)
    // A rounded conversion may end just outside.
    const slack = (high.value - low.value) / 1000
    if (!limit || value === undefined || !(value < low.value - slack || value > high.value + slack)) continue
    return {
      message: `the reading is ${limit.value} ${own.value}, and \`${tag}\` measures ${low.value} to ${high.value} ${unit.value}`,
      place: limit.place,
      related: [{ label: 'its range in the I/O list', place: low.place }],
      help: 'correct the reading or the range, or name the device that measures the value',
    }
  }
  return undefined
}
