import { brokenAccumulatorLimits } from '../../energy/accumulator-limits.ts'
import { inTradeUnits } from '../../energy/trade-units.ts'
import type { EnergyStore } from '../../model/energy-store.ts'
import { storing } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const accumulatorBeyondLimits: Rule = {
  id: 'accumulator-beyond-limits',
  severity: 'error',
  summary: 'The working pressures of a bladder accumulator do not suit its precharge.',
  why: 'The bladder is drawn into the oil port or crushed, and the gas goes into the oil.',
  source: 'guide of an accumulator maker (one text): lowest pressure from 1.1 times, highest up to 4 times the precharge',

  *check(machine) {
    for (const { source, results } of storing(machine)) {
      for (const { store } of results) {
        if (store.kind !== 'accumulator' || store.type !== 'bladder') continue
        const { prechargePa, lowestPressurePa, highestPressurePa } = store.given
        for (const { limit, neededPa, ratio } of brokenAccumulatorLimits({
          prechargePa,
          lowestPressurePa,
          highestPressurePa,
          makersRatio: store.makersRatio,
        })) {
          const key = limit === 'lowest' ? 'lowestPressure' : 'highestPressure'
          const bound = inTradeUnits({ value: neededPa, unit: 'Pa' })
          yield {
            message: `the ${limit} pressure of the accumulator of \`${source.id.value}\` is ${written(store, key)}, and must be at ${limit === 'lowest' ? 'least' : 'most'} ${bound.value} ${bound.unit}`,
            place: store.quantities[key]?.unit.place ?? store.place,
            note: `that is ${ratio} times its precharge of ${written(store, 'precharge')}`,
            help:
              limit === 'lowest'
                ? 'correct the precharge or the pressure'
                : 'correct the precharge or the pressure, or give the ratio of its data sheet under `makersRatio`',
          }
        }
      }
    }
  },
}

function written({ quantities }: EnergyStore, key: string): string {
  const quantity = quantities[key]
  return quantity ? `${quantity.value} ${quantity.unit.value}` : ''
}
