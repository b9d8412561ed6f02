import { converted } from '../../model/unit-scale.ts'
import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const rangeAgainstDevice: Rule = {
  id: 'range-against-device',
  severity: 'error',
  summary: 'The I/O list scales a signal otherwise than the device is set.',
  why: 'The screen shows a wrong value, and every lesson that compares with the signal finds a fault that is none.',
  source: 'house rule',

  *check(_, graph) {
    for (const { device, wired } of graph.made(checkouts)) {
      for (const { signal, values } of wired) {
        const [low, high, unit] = [values.placed('rangeLow'), values.placed('rangeHigh'), values.placedText('rangeUnit')]
        if (!signal?.low || !signal.high || !low || !high) continue
        const ofList = signal.unit?.value
        const into = (value: number) => (unit && ofList !== undefined && unit.value !== ofList ? converted(value, unit.value, ofList) : value)
        const [own, top] = [into(low.value), into(high.value)]
        // Units that cannot be converted may mean the same: only a conversion tells.
        if (own === undefined || top === undefined || (same(own, signal.low.value) && same(top, signal.high.value))) continue
        const wrong = same(own, signal.low.value) ? signal.high : signal.low
        yield {
          message: `the I/O list scales \`${device.tag.value}\` to ${range(signal.low.value, signal.high.value, ofList)}, and the device is set to ${range(low.value, high.value, unit?.value)}`,
          place: wrong.place,
          related: [{ label: 'the range of the device', place: wrong === signal.high ? high.place : low.place }],
          help: 'look at the device itself, and correct the one that is wrong',
        }
      }
    }
  },
}

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1)
const range = (low: number, high: number, unit = '') => `${figure(low)} to ${figure(high)} ${unit}`.trim()
