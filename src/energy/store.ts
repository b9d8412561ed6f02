import { accumulatorEnergy } from './accumulator.ts'
import { burnThresholdC, type Surface } from './burn-threshold.ts'
import { capacitorEnergy } from './capacitor.ts'
import { chargedByLine } from './charged-by-line.ts'
import { compressedLiquidEnergy } from './compressed-liquid.ts'
import { standardAtmospherePa } from './constants.ts'
import { coolDownTime } from './cool-down.ts'
import { dcBusPeak } from './dc-bus-peak.ts'
import { dischargeTime } from './discharge.ts'
import { boilingWater, flashFraction } from './flash-steam.ts'
import { isentropicGasEnergy } from './gas-energy.ts'
import type { InputName } from './inputs.ts'
import type { Result } from './law.ts'
import { oilDischargeTime } from './oil-discharge-time.ts'
import { raisedLoadEnergy } from './raised-load.ts'
import { residualVoltage, residualVoltageV } from './residual-voltage.ts'
import { rotorEnergy } from './rotor.ts'
import { runDownTime, viscousRunDownTime } from './run-down.ts'
import { springEnergy, torsionSpringEnergy } from './spring.ts'
import { vacuumEnergy } from './vacuum.ts'
import { ventTime, ventTimeByArea } from './vent-time.ts'

export type StoreKind =
  | 'capacitor'
  | 'receiver'
  | 'accumulator'
  | 'compressed-liquid'
  | 'raised-load'
  | 'spring'
  | 'torsion-spring'
  | 'rotor'
  | 'hot-body'
  | 'vacuum'
  | 'chemical'

/** One thing that holds energy: what its author gave, in SI units. Pressures are gauge pressures. */
export interface Store {
  kind: StoreKind
  given: Readonly<Partial<Record<InputName, number>>>
  /** Of a hot body that is touched. */
  surface?: Surface | undefined
  contactS?: number | undefined
  liquid?: 'water' | undefined
}

/** Energy in joule that a store holds; undefined for the kinds that have no law. */
export function energyOfStore({ kind, given }: Store): Result | undefined {
  const all = { ...nothing, ...given }
  switch (kind) {
    case 'capacitor':
      return capacitorEnergy(chargedByLine(all))
    case 'receiver':
      return isentropicGasEnergy(all)
    case 'accumulator':
      return accumulatorEnergy({ ...all, prechargePa: absolute(all.prechargePa), highestPressurePa: absolute(all.highestPressurePa) })
    case 'compressed-liquid':
      return compressedLiquidEnergy(all)
    case 'raised-load':
      return raisedLoadEnergy(all)
    case 'spring':
      return springEnergy(all)
    case 'torsion-spring':
      return torsionSpringEnergy(all)
    case 'rotor':
      return rotorEnergy(all)
    case 'vacuum':
      return vacuumEnergy(all)
    case 'hot-body':
    case 'chemical':
      return undefined
  }
}

/** Time in seconds until a store is harmless by itself; undefined where no time makes it so, and an act must. */
export function waitOfStore({ kind, given, surface, contactS }: Store): Result | undefined {
  const all = { ...nothing, ...given }
  switch (kind) {
    case 'capacitor': {
      const charged = chargedByLine(all)
      const rule = residualVoltage(charged)
      if ('verdict' in rule && rule.verdict === 'charge-exempt' && !rule.time) return undefined
      return dischargeTime({ ...charged, limitVoltageV: charged.limitVoltageV ?? residualVoltageV })
    }
    case 'rotor':
      return all.viscousDragNmsPerRad === undefined ? runDownTime(all) : viscousRunDownTime(all)
    case 'hot-body': {
      const thresholdC = surface !== undefined && contactS !== undefined ? burnThresholdC(surface, contactS) : undefined
      return coolDownTime({ ...all, harmlessK: all.harmlessK ?? (thresholdC === undefined ? undefined : thresholdC + 273.15) })
    }
    case 'receiver':
      return all.effectiveAreaM2 === undefined ? ventTime(all) : ventTimeByArea(all)
    case 'accumulator':
      return oilDischargeTime({ ...all, prechargePa: absolute(all.prechargePa), highestPressurePa: absolute(all.highestPressurePa) })
    default:
      return undefined
  }
}

/** What else is computed of a store, besides energy and time: the voltage of a bus, the share of hot water that turns to steam. */
export function furtherOfStore({ kind, given, liquid }: Store): Result | undefined {
  if (kind === 'capacitor' && given.startVoltageV === undefined && given.lineVoltageV !== undefined)
    return dcBusPeak({ lineVoltageV: given.lineVoltageV })
  if (kind !== 'hot-body' || liquid !== 'water' || given.liquidEnthalpyJPerKg === undefined) return undefined
  return flashFraction({ liquidEnthalpyJPerKg: given.liquidEnthalpyJPerKg, ...boilingWater })
}

const absolute = (gaugePa: number | undefined) => (gaugePa === undefined ? undefined : gaugePa + standardAtmospherePa)

/** Every input that a store can lack. */
const nothing = {
  capacitanceF: undefined,
  resistanceOhm: undefined,
  startVoltageV: undefined,
  lineVoltageV: undefined,
  limitVoltageV: undefined,
  gaugePressurePa: undefined,
  volumeM3: undefined,
  sonicConductanceM3PerSPa: undefined,
  effectiveAreaM2: undefined,
  criticalRatio: undefined,
  harmlessPressurePa: undefined,
  orificeAreaM2: undefined,
  dischargeCoefficient: undefined,
  densityKgPerM3: undefined,
  adiabaticExponent: undefined,
  prechargePa: undefined,
  highestPressurePa: undefined,
  polytropicExponent: undefined,
  bulkModulusPa: undefined,
  massKg: undefined,
  heightM: undefined,
  springRateNPerM: undefined,
  deflectionM: undefined,
  torsionRateNmPerRad: undefined,
  angleRad: undefined,
  momentOfInertiaKgM2: undefined,
  speedRadPerS: undefined,
  brakingTorqueNm: undefined,
  viscousDragNmsPerRad: undefined,
  harmlessSpeedRadPerS: undefined,
  temperatureK: undefined,
  ambientK: undefined,
  harmlessK: undefined,
  timeConstantS: undefined,
}
