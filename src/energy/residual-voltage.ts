import { type Impossible, isComputed, type NotComputed } from '../law/law.ts'
import { capacitorCharge } from './capacitor.ts'
import { dischargeTime } from './discharge.ts'
import type { Computed, Given } from './law.ts'

/** Source: IEC 60204-1, 6.2.4; NFPA 79-2024, 6.5.1: live parts after the supply is off. */
export const residualVoltageV = 60
export const residualChargeC = 60e-6
export const enclosureLimitS = 5
/** Pins of a plug, and conductors like them, that can be touched when it is withdrawn. */
export const plugLimitS = 1

interface Verdict {
  /** `charge-exempt`: too little charge for the rule. `too-slow`: a delay notice with the time, or another means, is needed. */
  verdict: 'charge-exempt' | 'in-time' | 'too-slow'
  charge: Computed
  /** To 60 V; absent where the charge is exempt and no resistor is known. */
  time?: Computed
  limitS: number
}

/** Whether a capacitor falls to 60 V in the time that IEC 60204-1, 6.2.4 gives. */
export function residualVoltage(
  given: Given<'capacitanceF' | 'resistanceOhm' | 'startVoltageV'>,
  where: 'enclosure' | 'plug' = 'enclosure',
): Verdict | NotComputed | Impossible {
  const limitS = where === 'plug' ? plugLimitS : enclosureLimitS
  const charge = capacitorCharge(given)
  const time = dischargeTime({ ...given, limitVoltageV: residualVoltageV })
  if (isComputed(charge) && charge.value <= residualChargeC) {
    return { verdict: 'charge-exempt', charge, limitS, ...(isComputed(time) ? { time } : {}) }
  }
  if (!isComputed(time)) return time
  if (!isComputed(charge)) return charge
  return { verdict: time.value > limitS ? 'too-slow' : 'in-time', charge, time, limitS }
}
