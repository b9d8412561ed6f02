import type { Rule } from '../rule.ts'

export const unusedIsolationPoint: Rule = {
  id: 'unused-isolation-point',
  severity: 'error',
  summary: 'An isolation point cuts off no energy source.',
  why: 'Either a source is missing from energy.yaml, or people hang a lock where it holds nothing.',
  source: '29 CFR 1910.147(d)(3)',
  guards: 'people',

  *check({ points, energy }) {
    const used = new Set(energy.flatMap(({ isolation }) => isolation.map(({ point }) => point.value)))
    for (const point of points) {
      if (used.has(point.point.value)) continue
      yield {
        message: `isolation point \`${point.point.value}\` cuts off no energy source`,
        place: point.point.place,
        help: 'name it under `isolation` of the source that it cuts off, or take it out',
      }
    }
  },
}
