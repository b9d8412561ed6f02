import { figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

/** So many cables show how long those of a machine are; one that is so many times longer than most is a slip of the pen. */
const enough = 8
const farOff = 15

export const cableOutOfLine: Rule = {
  id: 'cable-out-of-line',
  severity: 'warning',
  summary: 'A cable is many times as long as the others of the machine.',
  why: 'What it drops is computed, and a good reading is taken for a fault.',
  source: 'house rule',

  *check({ checkout }) {
    const lengths = (checkout?.devices ?? []).flatMap(({ name, numbers: { cableLengthM: length } }) => (length ? [{ name, length }] : []))
    if (lengths.length < enough) return
    const middle = lengths.map(({ length }) => length.value).sort((a, b) => a - b)[lengths.length >> 1] ?? 0
    for (const { name, length } of lengths) {
      if (length.value <= farOff * middle) continue
      yield {
        message: `the cable of \`${name.value}\` is ${figure(length.value)} m long, and half of all are ${figure(middle)} m or less`,
        place: length.place,
        help: 'look for a digit or a decimal point too many, or a length in another unit',
      }
    }
  },
}
