import type { Rule } from './rule.ts'
import { cableDropTooHigh } from './rules/cable-drop-too-high.ts'
import { checkoutDataMissing } from './rules/checkout-data-missing.ts'
import { gapBeyondAssured } from './rules/gap-beyond-assured.ts'
import { impossibleCheckoutValue } from './rules/impossible-checkout-value.ts'
import { loopBudgetExceeded } from './rules/loop-budget-exceeded.ts'
import { outputAgainstCard } from './rules/output-against-card.ts'
import { partOfOtherTechnology } from './rules/part-of-other-technology.ts'
import { rangeAgainstDevice } from './rules/range-against-device.ts'
import { supplyOutsideBand } from './rules/supply-outside-band.ts'
import { switchMounting } from './rules/switch-mounting.ts'
import { unknownCardData } from './rules/unknown-card-data.ts'
import { unknownSupply } from './rules/unknown-supply.ts'
import { unusedCheckoutValue } from './rules/unused-checkout-value.ts'

/** The rules about what devices should read. A new one is one line here. */
export const checkoutRules: readonly Rule[] = [
  cableDropTooHigh,
  checkoutDataMissing,
  gapBeyondAssured,
  impossibleCheckoutValue,
  loopBudgetExceeded,
  outputAgainstCard,
  partOfOtherTechnology,
  rangeAgainstDevice,
  supplyOutsideBand,
  switchMounting,
  unknownCardData,
  unknownSupply,
  unusedCheckoutValue,
]
