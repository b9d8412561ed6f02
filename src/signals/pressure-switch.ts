import type { Result } from '../law/law.ts'
import { type Given, law } from './law.ts'

const inputs = ['setBar', 'deadBandBar', 'tolerancePercent', 'fullScaleBar'] as const
type Values = Readonly<Record<(typeof inputs)[number], number>>

const conflict = ({ setBar, deadBandBar, fullScaleBar }: Values) => {
  if (deadBandBar >= setBar) return 'the `deadBand` is as large as the set point: the switch never resets'
  return setBar > fullScaleBar ? 'the set point lies above the `fullScale`' : undefined
}
const accuracy = ({ tolerancePercent, fullScaleBar }: Values) => (tolerancePercent * fullScaleBar) / 100
const edge = (formula: string, value: (values: Values) => number) => law({ formula, unit: 'bar', inputs, conflict, value })

const edges = {
  tripLow: edge('p = s − e%·F/100', (values) => values.setBar - accuracy(values)),
  tripHigh: edge('p = s + e%·F/100', (values) => values.setBar + accuracy(values)),
  resetLow: edge('p = s − b − e%·F/100', (values) => values.setBar - values.deadBandBar - accuracy(values)),
  resetHigh: edge('p = s − b + e%·F/100', (values) => values.setBar - values.deadBandBar + accuracy(values)),
}

/** Pressures in bar between which a switch, set on the rise, trips, and on the fall resets. Both have the accuracy. */
export function pressureSwitchBands(given: Given<(typeof inputs)[number]>): Record<keyof typeof edges, Result> {
  return {
    tripLow: edges.tripLow(given),
    tripHigh: edges.tripHigh(given),
    resetLow: edges.resetLow(given),
    resetHigh: edges.resetHigh(given),
  }
}
