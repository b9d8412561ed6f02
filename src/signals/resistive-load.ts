import { law } from './law.ts'

/** Resistance in Ω of a load that is nothing but resistance, such as one heating element. */
export const loadResistance = law({
  formula: 'R = Uₙ²/P',
  unit: 'Ω',
  inputs: ['ratedV', 'ratedW'],
  value: ({ ratedV, ratedW }) => ratedV ** 2 / ratedW,
})

/** Current in A of a load on its rated voltage, of direct current or of one phase in step with its voltage. */
export const loadCurrent = law({ formula: 'I = P/Uₙ', unit: 'A', inputs: ['ratedV', 'ratedW'], value: ({ ratedV, ratedW }) => ratedW / ratedV })
