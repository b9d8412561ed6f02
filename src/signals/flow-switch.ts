import type { Result } from '../law/law.ts'
import { type Given, law } from './law.ts'

const inputs = ['setLPerMin', 'deadBandLPerMin', 'toleranceLPerMin'] as const
type Values = Readonly<Record<(typeof inputs)[number], number>>

const conflict = ({ setLPerMin, deadBandLPerMin }: Values) =>
  deadBandLPerMin >= setLPerMin ? 'the `flowDeadBand` is as large as the set flow: the switch never resets' : undefined
const edge = (formula: string, value: (values: Values) => number) => law({ formula, unit: 'l/min', inputs, conflict, value })

const edges = {
  tripLow: edge('Q = s − c', ({ setLPerMin, toleranceLPerMin }) => setLPerMin - toleranceLPerMin),
  tripHigh: edge('Q = s + c', ({ setLPerMin, toleranceLPerMin }) => setLPerMin + toleranceLPerMin),
  resetLow: edge('Q = s − b − c', ({ setLPerMin, deadBandLPerMin, toleranceLPerMin }) => setLPerMin - deadBandLPerMin - toleranceLPerMin),
  resetHigh: edge('Q = s − b + c', ({ setLPerMin, deadBandLPerMin, toleranceLPerMin }) => setLPerMin - deadBandLPerMin + toleranceLPerMin),
}

/** Flows in l/min between which a switch, set on the rise, trips, and on the fall resets. Common practice. */
export function flowSwitchBands(given: Given<(typeof inputs)[number]>): Record<keyof typeof edges, Result> {
  return {
    tripLow: edges.tripLow(given),
    tripHigh: edges.tripHigh(given),
    resetLow: edges.resetLow(given),
    resetHigh: edges.resetHigh(given),
  }
}
