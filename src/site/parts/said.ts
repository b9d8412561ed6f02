import type { Condition } from '../../hazard/without-lockout.ts'
import type { LockoutPhase } from '../../model/lockout-phases.ts'
import type { EnergySource } from '../../model/machine.ts'
import type { EnergyForm } from '../../model/schema/energy-file.ts'
import type { Outputs } from '../../model/schema/outputs.ts'
import { fill } from '../words/fill.ts'
import type { Labels } from '../words/labels.ts'

/** `400 V`, `180 kg, 1400 mm`: magnitudes with their units, a narrow no-break space between. */
export function quantities(list: EnergySource['magnitude']): string {
  return list.map(({ value, unit }) => `${value}\u202f${unit.value}`).join(', ')
}

export function reactionLabel(labels: Labels, reaction: 'stop' | 'hold' | 'message'): string {
  return { stop: labels.reactionStop, hold: labels.reactionHold, message: labels.reactionMessage }[reaction]
}

export function spareLabel(labels: Labels, spare: 'wear' | 'spare' | 'consumable' | 'none'): string {
  return { wear: labels.spareWear, spare: labels.spareSpare, consumable: labels.spareConsumable, none: labels.spareNone }[spare]
}

export function energyLabel(labels: Labels, form: EnergyForm): string {
  return {
    electrical: labels.energyElectrical,
    pneumatic: labels.energyPneumatic,
    hydraulic: labels.energyHydraulic,
    water: labels.energyWater,
    gravity: labels.energyGravity,
    thermal: labels.energyThermal,
    chemical: labels.energyChemical,
    rotating: labels.energyRotating,
    spring: labels.energySpring,
  }[form]
}

export function drawingKindLabel(labels: Labels, kind: 'schematic' | 'layout' | 'pneumatic' | 'piping' | 'assembly'): string {
  return {
    schematic: labels.kindSchematic,
    layout: labels.kindLayout,
    pneumatic: labels.kindPneumatic,
    piping: labels.kindPiping,
    assembly: labels.kindAssembly,
  }[kind]
}

export type JobKind = 'start' | 'stop' | 'set-up' | 'clean' | 'maintain' | 'other'

export function jobKindLabel(labels: Labels, kind: JobKind): string {
  return {
    start: labels.kindStart,
    stop: labels.kindStop,
    'set-up': labels.kindSetUp,
    clean: labels.kindClean,
    maintain: labels.kindMaintain,
    other: labels.kindOther,
  }[kind]
}

/** What stands after "every": `day`, `500 operating hours`. */
export function intervalLabel(labels: Labels, { every, unit }: { every: number; unit: 'h' | 'day' | 'week' | 'month' | 'year' }): string {
  if (every === 1) return { h: labels.oneH, day: labels.oneDay, week: labels.oneWeek, month: labels.oneMonth, year: labels.oneYear }[unit]
  return fill({ h: labels.unitH, day: labels.unitDay, week: labels.unitWeek, month: labels.unitMonth, year: labels.unitYear }[unit], { every })
}

/** A waiting time in the unit that reads best; never rounded down. */
export function waitLabel(labels: Labels, waitS: number): string {
  if (waitS < 120) return fill(labels.seconds, { seconds: Math.ceil(waitS) })
  const minutes = Math.ceil(waitS / 60)
  return minutes < 120 ? fill(labels.minutesLong, { minutes }) : fill(labels.hoursLong, { hours: Math.floor(minutes / 60), minutes: minutes % 60 })
}

/** The heading of a phase of a lockout. */
export function phaseLabel(labels: Labels, phase: LockoutPhase): string {
  return {
    prepare: labels.phasePrepare,
    notify: labels.phaseNotify,
    'shut-down': labels.phaseShutDown,
    isolate: labels.phaseIsolate,
    lock: labels.phaseLock,
    dissipate: labels.phaseDissipate,
    verify: labels.phaseVerify,
    work: labels.phaseWork,
    release: labels.phaseRelease,
  }[phase]
}

export function conditionLabel(labels: Labels, condition: Condition): string {
  return {
    noStoredEnergy: labels.claimNoStoredEnergy,
    oneSource: labels.claimOneSource,
    lockDeenergises: labels.claimLockDeenergises,
    lockedDuringWork: labels.claimLockedDuringWork,
    oneLock: labels.claimSingleLock,
    lockInOwnControl: labels.claimLockInOwnControl,
    noHazardToOthers: labels.claimNoHazardToOthers,
    noEarlierAccident: labels.claimNoEarlierAccident,
    duringProduction: labels.claimDuringProduction,
    routine: labels.claimRoutine,
    repetitive: labels.claimRepetitive,
    integral: labels.claimIntegral,
    otherProtection: labels.claimOtherProtection,
  }[condition]
}

export function guardStateLabel(labels: Labels, guards: Outputs['guards']): string {
  return { closed: labels.guardsClosed, 'enabling-device': labels.guardsEnablingDevice, 'locked-out': labels.guardsLockedOut }[guards]
}
