import type { Rule } from '../rule.ts'

export const sourceWithoutIsolation: Rule = {
  id: 'source-without-isolation',
  severity: 'error',
  summary: 'An energy source has no device that isolates it.',
  why: 'The isolation board would show an energy that nobody can cut off.',
  source: '29 CFR 1910.147(d)(3)',
  guards: 'people',

  *check({ energy }) {
    for (const { id, isolation, pointNames } of energy) {
      // A point that is not there is reported by its own rule.
      if (isolation.length > 0 || pointNames.length > 0) continue
      yield {
        message: `energy source \`${id.value}\` has no isolating device`,
        place: id.place,
        help: 'name the device that cuts it off under `isolation`',
      }
    }
  },
}
