import type { Rule } from '../rule.ts'

export const buildUpWithoutWatch: Rule = {
  id: 'build-up-without-watch',
  severity: 'error',
  summary: 'An energy source can build up again, and nothing says how it is watched until the work is done.',
  why: 'It was proved gone before the work and comes back during it.',
  source: '29 CFR 1910.147(d)(5)(ii)',
  guards: 'people',

  *check({ energy, sourceLanguage }) {
    for (const source of energy) {
      if (!source.reaccumulates || source.watch?.[sourceLanguage]) continue
      yield {
        message: `energy source \`${source.id.value}\` can build up again, and nothing says how it is watched`,
        place: source.placeOf('reaccumulates'),
        help: 'say under `watch` what stays open or in view until the work is done, or after how many minutes the proof is made again',
      }
    }
  },
}
