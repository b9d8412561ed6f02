import { excessGain, leastObjectLength, neededGain, type PhotoelectricKind } from '../signals/photoelectric.ts'
import { type Expectation, expected, limitsRestOn, together } from './expectation.ts'
import type { Wired } from './wiring.ts'

/** How much more light arrives than is needed, for which only a through-beam has a law; and what passes unseen. */
export function lightExpectations(wired: Wired, kind: PhotoelectricKind): Expectation[] {
  return [gainOf(wired, kind), ...passing(wired)]
}

function gainOf({ values }: Wired, kind: PhotoelectricKind): Expectation {
  const frame = { measured: 'excess-gain', point: 'device', state: 'always', unit: '1' } as const
  const air = values.choice('air')
  const gain = expected(frame, excessGain(kind, { ratedRangeM: values.number('ratedRangeM'), rangeM: values.number('rangeM') }))
  if (gain.value === undefined) return gain
  if (!air) return { ...gain, notComputed: ['air'] }
  return { ...gain, low: neededGain[air].value, restsOn: together(gain.restsOn, limitsRestOn(neededGain[air])) }
}

/** The shortest object or gap that sensor, card and program see at the speed in service; nothing where no speed is given. */
export function passing({ values, ofCard }: Wired): Expectation[] {
  const objectSpeedMPerS = values.number('objectSpeedMPerS')
  if (!objectSpeedMPerS) return []
  const times = { responseMs: values.number('responseMs'), filterMs: ofCard.number('filterMs'), scanMs: ofCard.number('scanMs') }
  const at = { value: objectSpeedMPerS.value, unit: 'm/s' }
  const found = leastObjectLength({ objectSpeedMPerS, ...times, beamWidthMm: values.number('beamWidthMm') })
  return [expected({ measured: 'object-length', point: 'device', state: 'in-service', at, unit: 'mm' }, found, (low) => ({ low }))]
}
