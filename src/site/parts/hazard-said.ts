import type { SignalWord } from '../../hazard/signal-word.ts'
import type { crushedParts, HazardGroup, lifePhases } from '../../model/schema/hazards-file.ts'
import type { Labels } from '../words/labels.ts'

/** What happens, in the words of the table, if a message of this word is not followed. */
export function wordMeaning(labels: Labels, word: SignalWord): string {
  return { danger: labels.meansDanger, warning: labels.meansWarning, caution: labels.meansCaution, notice: labels.meansNotice }[word]
}

export function hazardGroupLabel(labels: Labels, group: HazardGroup): string {
  return {
    mechanical: labels.hazardMechanical,
    electrical: labels.hazardElectrical,
    thermal: labels.hazardThermal,
    noise: labels.hazardNoise,
    vibration: labels.hazardVibration,
    radiation: labels.hazardRadiation,
    substance: labels.hazardSubstance,
    ergonomic: labels.hazardErgonomic,
    environment: labels.hazardEnvironment,
    combination: labels.hazardCombination,
  }[group]
}

export function gapLabel(labels: Labels, part: (typeof crushedParts)[number]): string {
  return {
    body: labels.gapForBody,
    head: labels.gapForHead,
    leg: labels.gapForLeg,
    foot: labels.gapForFoot,
    toes: labels.gapForToes,
    arm: labels.gapForArm,
    hand: labels.gapForHand,
    finger: labels.gapForFinger,
  }[part]
}

export function lifePhaseLabel(labels: Labels, phase: (typeof lifePhases)[number]): string {
  return {
    transport: labels.phaseTransport,
    installation: labels.phaseInstallation,
    setting: labels.phaseSetting,
    operation: labels.phaseOperation,
    cleaning: labels.phaseCleaning,
    maintenance: labels.phaseMaintenance,
    'fault-finding': labels.phaseFaultFinding,
    dismantling: labels.phaseDismantling,
  }[phase]
}

/** Where the card of a hazard stands in the collected messages. */
export const hazardAnchor = (id: string) => `hazard-${id}`
