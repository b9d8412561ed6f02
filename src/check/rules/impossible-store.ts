import { storing } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const impossibleStore: Rule = {
  id: 'impossible-store',
  severity: 'error',
  summary: 'What is given of stored energy cannot be.',
  why: 'No energy and no waiting time can be told from it.',
  source: 'house rule',
  guards: 'people',

  *check(machine) {
    for (const { source, results } of storing(machine)) {
      for (const { store, energy, wait } of results) {
        const reasons = [energy, wait].flatMap((result) => (result && 'impossible' in result ? [result.impossible] : []))
        for (const reason of new Set(reasons)) {
          yield {
            message: `the ${store.kind} of energy source \`${source.id.value}\` cannot be: ${reason}`,
            place: store.place,
            help: 'correct the value',
          }
        }
      }
    }
  },
}
