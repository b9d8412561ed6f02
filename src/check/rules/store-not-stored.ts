import type { Rule } from '../rule.ts'

export const storeNotStored: Rule = {
  id: 'store-not-stored',
  severity: 'error',
  summary: 'An energy source says what holds its energy, and that nothing remains after isolation.',
  why: 'No release and no waiting time would be shown for what remains.',
  source: '29 CFR 1910.147(d)(5)(i)',
  guards: 'people',

  *check({ energy }) {
    for (const source of energy) {
      const [first] = source.stores
      if (source.stored || !first) continue
      yield {
        message: `energy source \`${source.id.value}\` has a ${first.kind}, and is said to store nothing`,
        place: source.placeOf('stored'),
        related: [{ label: 'this holds energy', place: first.place }],
        help: 'write `stored: true` and say under `dissipate` how it is released, or take `store` out',
      }
    }
  },
}
