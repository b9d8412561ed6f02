import type { Rule } from './rule.ts'
import { cableDropTooHigh } from './rules/cable-drop-too-high.ts'
import { cableOutOfLine } from './rules/cable-out-of-line.ts'
import { checkoutDataMissing } from './rules/checkout-data-missing.ts'
import { contactAgainstPart } from './rules/contact-against-part.ts'
import { fuseBelowLoad } from './rules/fuse-below-load.ts'
import { gapBeyondAssured } from './rules/gap-beyond-assured.ts'
import { impossibleCheckoutValue } from './rules/impossible-checkout-value.ts'
import { inputVoltageTooLow } from './rules/input-voltage-too-low.ts'
import { leakageAboveCard } from './rules/leakage-above-card.ts'
import { lightReserveTooLow } from './rules/light-reserve-too-low.ts'
import { loadBelowMinimum } from './rules/load-below-minimum.ts'
import { loadVoltageOffRating } from './rules/load-voltage-off-rating.ts'
import { loopBudgetExceeded } from './rules/loop-budget-exceeded.ts'
import { objectPassesUnseen } from './rules/object-passes-unseen.ts'
import { outputAgainstCard } from './rules/output-against-card.ts'
import { outputOverloaded } from './rules/output-overloaded.ts'
import { partOfOtherTechnology } from './rules/part-of-other-technology.ts'
import { pulsesTooFast } from './rules/pulses-too-fast.ts'
import { rangeAgainstDevice } from './rules/range-against-device.ts'
import { rangeBeyondElement } from './rules/range-beyond-element.ts'
import { sensorBeyondRange } from './rules/sensor-beyond-range.ts'
import { speedAgainstPoles } from './rules/speed-against-poles.ts'
import { supplyOutsideBand } from './rules/supply-outside-band.ts'
import { switchMounting } from './rules/switch-mounting.ts'
import { unknownCardData } from './rules/unknown-card-data.ts'
import { unknownCrossSection } from './rules/unknown-cross-section.ts'
import { unknownSupply } from './rules/unknown-supply.ts'
import { unknownTargetMaterial } from './rules/unknown-target-material.ts'
import { unusedCheckoutValue } from './rules/unused-checkout-value.ts'
import { valueAgainstDescription } from './rules/value-against-description.ts'

/** The rules about what devices should read. A new one is one line here. */
export const checkoutRules: readonly Rule[] = [
  cableDropTooHigh,
  cableOutOfLine,
  checkoutDataMissing,
  contactAgainstPart,
  fuseBelowLoad,
  gapBeyondAssured,
  impossibleCheckoutValue,
  inputVoltageTooLow,
  leakageAboveCard,
  lightReserveTooLow,
  loadBelowMinimum,
  loadVoltageOffRating,
  loopBudgetExceeded,
  objectPassesUnseen,
  outputAgainstCard,
  outputOverloaded,
  partOfOtherTechnology,
  pulsesTooFast,
  rangeAgainstDevice,
  rangeBeyondElement,
  sensorBeyondRange,
  speedAgainstPoles,
  supplyOutsideBand,
  switchMounting,
  unknownCardData,
  unknownCrossSection,
  unknownSupply,
  unknownTargetMaterial,
  unusedCheckoutValue,
  valueAgainstDescription,
]
