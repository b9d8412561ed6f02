import type { Signal } from '../model/machine.ts'
import { converted, scaleOf } from '../model/unit-scale.ts'
import type { Problem } from '../source/finding.ts'
import type { Reading } from './readings.ts'

/** A reading in a unit of another quantity than the signal of `tag` measures, or with a limit outside its range. */
export function readingAgainstRange(reading: Reading, tag: string, { low, high, unit }: Signal): Problem | undefined {
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
