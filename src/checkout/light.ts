import { excessGain, neededGain, type PhotoelectricKind } from '../signals/photoelectric.ts'
import { type Expectation, expected, limitsRestOn, together } from './expectation.ts'
import type { Wired } from './wiring.ts'

/** How much more light arrives than is needed; only a through-beam has a law for it. */
export function lightExpectations({ values }: Wired, kind: PhotoelectricKind): Expectation[] {
  const frame = { measured: 'excess-gain', point: 'device', state: 'always', unit: '1' } as const
  const air = values.choice('air')
  const gain = expected(frame, excessGain(kind, { ratedRangeM: values.number('ratedRangeM'), rangeM: values.number('rangeM') }))
  if (gain.value === undefined) return [gain]
  if (!air) return [{ ...gain, notComputed: ['air'] }]
  return [{ ...gain, low: neededGain[air].value, restsOn: together(gain.restsOn, limitsRestOn(neededGain[air])) }]
}
