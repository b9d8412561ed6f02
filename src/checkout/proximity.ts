import type { Stated } from '../law/law.ts'
import type { CheckoutNumber } from '../model/checkout-data.ts'
import { materialFactor } from '../signals/material-factor.ts'
import {
  distanceFactors,
  effectiveFactors,
  type ProximityPrinciple,
  proximityLimits,
  standardTargetSide,
  targetRefusal,
} from '../signals/proximity.ts'
import { type Mounting, mountingClearances } from '../signals/proximity-mounting.ts'
import { isRefused } from '../signals/refusals.ts'
import { differentialTravel, mostTravel, targetRate } from '../signals/switching.ts'
import { type Expectation, expected, isValue, stated } from './expectation.ts'
import { statedFrom, type Values } from './values-of.ts'
import type { Wired } from './wiring.ts'

/** Up to which gap a proximity switch must be on, and from which off. */
export function proximityExpectations({ values, device }: Wired): Expectation[] {
  const principle: ProximityPrinciple = device.technology?.value === 'capacitive' ? 'capacitive' : 'inductive'
  const on = { measured: 'on-distance', point: 'device', state: 'target', unit: 'mm' } as const
  const off = { measured: 'off-distance', point: 'device', state: 'none', unit: 'mm' } as const
  const ratedDistanceMm = values.number('ratedDistanceMm')
  const [material, givenFactor] = [values.text('targetMaterial'), values.number('materialFactor')]
  const factor = material === undefined && givenFactor === undefined ? undefined : materialFactor(principle, material ?? '', givenFactor)
  const side = standardTargetSide({ ratedDistanceMm, faceDiameterMm: values.number('faceDiameterMm') })
  const refused =
    (factor && isRefused(factor) && factor) || targetRefusal(values.number('targetSideMm')?.value, isValue(side) ? side.value : undefined)
  if (refused) return [expected(on, refused), expected(off, refused)]
  const known = factor && !isRefused(factor) ? factor : undefined
  const { assured, off: offShare } = distanceFactors[principle]
  const { mustBeOnTo } = proximityLimits({ ratedDistanceMm, materialFactor: known?.factor }, { assured, off: offShare })
  // The low end of a range of factors is safe for what must be on, the high end for what must be off.
  const highest = known?.range ? { ...known.factor, value: known.range[1] } : known?.factor
  const { mustBeOffFrom } = proximityLimits({ ratedDistanceMm, materialFactor: highest }, { assured, off: offShare })
  return [expected(on, mustBeOnTo, (high) => ({ low: 0, high })), expected(off, mustBeOffFrom, (low) => ({ low }))].map(naming)
}

/** What else can be held against a rule or a stroboscope: travel, rate, and the room that the switch needs. */
export function mountingExpectations({ values, device }: Wired): Expectation[] {
  const ratedDistanceMm = values.number('ratedDistanceMm')
  const [mounting, events, rated] = [values.choice('mounting'), eventsOf(values), values.number('ratedHz')]
  if (!ratedDistanceMm) return []
  const widest = { ...ratedDistanceMm, value: effectiveFactors.highest.value * ratedDistanceMm.value }
  const travel = differentialTravel({ travelFraction: mostTravel, effectiveDistanceMm: widest })
  const rate = { measured: 'switching-rate', point: 'device', state: 'in-service', unit: 'Hz' } as const
  return [
    expected({ measured: 'differential-travel', point: 'device', state: 'always', unit: 'mm' }, travel, (high) => ({ low: 0, high })),
    ...(events && rated
      ? [
          stated(
            { ...rate, value: events.stated.value, high: rated.value, ...(events.formula ? { formula: events.formula } : {}) },
            events.stated,
            rated,
          ),
        ]
      : []),
    ...(mounting && device.technology?.value !== 'capacitive'
      ? clearances(mounting, { ratedDistanceMm, faceDiameterMm: values.number('faceDiameterMm') })
      : []),
  ]
}

/** How often the target passes in Hz: as given, or by the targets on a part and its speed. `of`: the value that it hangs on. */
export function eventsOf(values: Values): { stated: Stated; of: CheckoutNumber; formula?: string } | undefined {
  const events = values.placed('eventsHz')
  if (events) return { stated: statedFrom(events), of: events }
  const speed = values.placed('speedPerMin')
  const rate = targetRate({ targets: values.number('targets'), speedPerMin: values.number('speedPerMin') })
  return speed && isValue(rate) ? { stated: { ...statedFrom(speed), value: rate.value }, of: speed, formula: rate.formula } : undefined
}

function clearances(mounting: Mounting, face: Parameters<typeof mountingClearances>[1]): Expectation[] {
  const found = mountingClearances(mounting, face)
  const rooms = [
    ['clear-in-front', found.background],
    ['clear-beside', found.sideBySide],
    ['clear-opposite', found.faceToFace],
    ...(mounting === 'flush'
      ? []
      : ([
          ['clear-behind', found.freeDepth],
          ['clear-around', found.freeDiameter],
        ] as const)),
  ] as const
  return rooms.map(([measured, room]) => expected({ measured, point: 'device', state: 'always', unit: 'mm' }, room, (low) => ({ low })))
}

/** Either of two values gives the factor. */
function naming(it: Expectation): Expectation {
  return it.notComputed?.includes('materialFactor')
    ? { ...it, notComputed: it.notComputed.map((name) => (name === 'materialFactor' ? 'targetMaterial' : name)) }
    : it
}
