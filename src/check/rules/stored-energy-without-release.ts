import type { Rule } from '../rule.ts'

export const storedEnergyWithoutRelease: Rule = {
  id: 'stored-energy-without-release',
  severity: 'error',
  summary: 'An energy source stores energy, and nothing says how it is released or held back.',
  why: 'After the lock is on, what is stored can still move, burn or shock.',
  source: '29 CFR 1910.147(d)(5)(i)',
  guards: 'people',

  *check({ energy, sourceLanguage }) {
    for (const { id, stored, dissipate } of energy) {
      if (!stored || dissipate?.[sourceLanguage]) continue
      yield {
        message: `energy source \`${id.value}\` stores energy, and nothing says how it is released`,
        place: id.place,
        help: 'say under `dissipate` how it is relieved, drained, lowered or blocked, or how long it takes to run down',
      }
    }
  },
}
