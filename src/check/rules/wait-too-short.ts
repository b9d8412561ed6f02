import { roundedUpS } from '../../energy/round-up.ts'
import { slowestOf } from '../../energy/wait-of-source.ts'
import { derivation, secondsText, storing } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const waitTooShort: Rule = {
  id: 'wait-too-short',
  severity: 'error',
  summary: 'The waiting time of an energy source is shorter than the time that it needs.',
  why: 'Somebody opens the guard or the cabinet while it can still move, burn or shock.',
  source: '29 CFR 1910.147(d)(5); IEC 60204-1, 6.2.4',
  guards: 'people',

  *check(machine) {
    for (const { source, results } of storing(machine)) {
      const { id, waitS } = source
      const needed = slowestOf(results)
      if (waitS === undefined || !needed || waitS >= needed.wait.value) continue
      yield {
        message: `energy source \`${id.value}\` is left for ${waitS} s, and needs ${secondsText(needed.wait.value)}`,
        place: source.placeOf('waitS'),
        related: [{ label: 'computed from this', place: needed.store.place }],
        note: derivation(needed.wait),
        help: `write at least \`waitS: ${roundedUpS(needed.wait.value)}\`, here and on every page that states the time, or correct the store`,
      }
    }
  },
}
