import { isComputed } from '../law/law.ts'
import { dcBusPeak } from './dc-bus-peak.ts'

/** The values of a capacitor with the voltage that its line charges it to, where no voltage is given. */
export function chargedByLine<T extends { startVoltageV?: number | undefined; lineVoltageV?: number | undefined }>(given: T): T {
  if (given.startVoltageV !== undefined || given.lineVoltageV === undefined) return given
  const peak = dcBusPeak({ lineVoltageV: given.lineVoltageV })
  return isComputed(peak) ? { ...given, startVoltageV: peak.value } : given
}
