import { type Given, law } from './law.ts'

const ends = ['signalLow', 'signalHigh', 'rangeLow', 'rangeHigh'] as const
type Ends = Readonly<Record<(typeof ends)[number], number>>

const noSpan = ({ signalLow, signalHigh, rangeLow, rangeHigh }: Ends) => {
  if (signalLow === signalHigh) return 'both ends of the signal are the same'
  return rangeLow === rangeHigh ? 'both ends of the range are the same' : undefined
}

/** The usual signals of the trade. `liveZero`: a broken wire reads less than the low end, and not a value. */
export const analogueSignals = {
  '4-20 mA': { unit: 'mA', liveZero: true, ends: { signalLow: 4, signalHigh: 20 } },
  '0-20 mA': { unit: 'mA', liveZero: false, ends: { signalLow: 0, signalHigh: 20 } },
  '0-10 V': { unit: 'V', liveZero: false, ends: { signalLow: 0, signalHigh: 10 } },
  '2-10 V': { unit: 'V', liveZero: true, ends: { signalLow: 2, signalHigh: 10 } },
  '1-5 V': { unit: 'V', liveZero: true, ends: { signalLow: 1, signalHigh: 5 } },
} as const satisfies Record<string, { unit: string; liveZero: boolean; ends: Given<'signalLow' | 'signalHigh'> }>

export type AnalogueSignal = keyof typeof analogueSignals

/** Signal for a value, in the unit of the signal. The range may run downwards. */
export const signalOfValue = law({
  formula: 's = s₀ + (s₁ − s₀)·(x − x₀)/(x₁ − x₀)',
  unit: '',
  inputs: ['value', ...ends],
  conflict: noSpan,
  value: ({ value, signalLow, signalHigh, rangeLow, rangeHigh }) =>
    signalLow + (signalHigh - signalLow) * ((value - rangeLow) / (rangeHigh - rangeLow)),
})

/** Value for a signal, in the unit of the range. A signal beyond its ends gives a value beyond the range. */
export const valueOfSignal = law({
  formula: 'x = x₀ + (x₁ − x₀)·(s − s₀)/(s₁ − s₀)',
  unit: '',
  inputs: ['signal', ...ends],
  conflict: noSpan,
  value: ({ signal, signalLow, signalHigh, rangeLow, rangeHigh }) =>
    rangeLow + (rangeHigh - rangeLow) * ((signal - signalLow) / (signalHigh - signalLow)),
})

/** Raw counts of a card for a signal, not rounded; the pair of counts is a matter of the card. */
export const countsOfSignal = law({
  formula: 'N = N₀ + (N₁ − N₀)·(s − s₀)/(s₁ − s₀)',
  unit: '1',
  inputs: ['signal', 'signalLow', 'signalHigh', 'countsLow', 'countsHigh'],
  conflict: ({ signalLow, signalHigh }) => (signalLow === signalHigh ? 'both ends of the signal are the same' : undefined),
  value: ({ signal, signalLow, signalHigh, countsLow, countsHigh }) =>
    countsLow + (countsHigh - countsLow) * ((signal - signalLow) / (signalHigh - signalLow)),
})

/** Signal for the raw counts that a controller shows. */
export const signalOfCounts = law({
  formula: 's = s₀ + (s₁ − s₀)·(N − N₀)/(N₁ − N₀)',
  unit: '',
  inputs: ['counts', 'signalLow', 'signalHigh', 'countsLow', 'countsHigh'],
  conflict: ({ countsLow, countsHigh }) => (countsLow === countsHigh ? 'both ends of the counts are the same' : undefined),
  value: ({ counts, signalLow, signalHigh, countsLow, countsHigh }) =>
    signalLow + (signalHigh - signalLow) * ((counts - countsLow) / (countsHigh - countsLow)),
})
