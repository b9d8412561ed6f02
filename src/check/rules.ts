import { compare } from '../source/place.ts'
import { checkoutRules } from './checkout-rules.ts'
import { energyRules } from './energy-rules.ts'
import type { Rule } from './rule.ts'
import { addressAgainstType } from './rules/address-against-type.ts'
import { addressGrammar } from './rules/address-grammar.ts'
import { addressNotInIoList } from './rules/address-not-in-io-list.ts'
import { adjusterDiffers } from './rules/adjuster-differs.ts'
import { alarmWithoutDevice } from './rules/alarm-without-device.ts'
import { alarmWithoutRecovery } from './rules/alarm-without-recovery.ts'
import { bareNumber } from './rules/bare-number.ts'
import { bareTag } from './rules/bare-tag.ts'
import { calloutOffPicture } from './rules/callout-off-picture.ts'
import { calloutOutOfOrder } from './rules/callout-out-of-order.ts'
import { calloutWithoutText } from './rules/callout-without-text.ts'
import { cardWithoutSignals } from './rules/card-without-signals.ts'
import { causeAgainstAlarm } from './rules/cause-against-alarm.ts'
import { causeOutOfOrder } from './rules/cause-out-of-order.ts'
import { channelOutOfRange } from './rules/channel-out-of-range.ts'
import { contactContradicted } from './rules/contact-contradicted.ts'
import { dangerOverused } from './rules/danger-overused.ts'
import { deviceWithoutDescription } from './rules/device-without-description.ts'
import { deviceWithoutPage } from './rules/device-without-page.ts'
import { deviceWithoutSignal } from './rules/device-without-signal.ts'
import { draftPage } from './rules/draft-page.ts'
import { duplicateAddress } from './rules/duplicate-address.ts'
import { duplicateAlarm } from './rules/duplicate-alarm.ts'
import { duplicateChannel } from './rules/duplicate-channel.ts'
import { duplicateDrawing } from './rules/duplicate-drawing.ts'
import { duplicateId } from './rules/duplicate-id.ts'
import { duplicatePart } from './rules/duplicate-part.ts'
import { duplicateRecovery } from './rules/duplicate-recovery.ts'
import { duplicateSetting } from './rules/duplicate-setting.ts'
import { duplicateSymbol } from './rules/duplicate-symbol.ts'
import { duplicateTag } from './rules/duplicate-tag.ts'
import { duplicateTerminal } from './rules/duplicate-terminal.ts'
import { emptyRange } from './rules/empty-range.ts'
import { exchangedDescriptions } from './rules/exchanged-descriptions.ts'
import { factDiffersInTranslation } from './rules/fact-differs-in-translation.ts'
import { fewerSignalsThanOthers } from './rules/fewer-signals-than-others.ts'
import { formatWithoutSetting } from './rules/format-without-setting.ts'
import { gapTooSmall } from './rules/gap-too-small.ts'
import { halfPosition } from './rules/half-position.ts'
import { harmAgainstHazard } from './rules/harm-against-hazard.ts'
import { impossiblePanel } from './rules/impossible-panel.ts'
import { incompleteHazard } from './rules/incomplete-hazard.ts'
import { incompleteSafetyMessage } from './rules/incomplete-safety-message.ts'
import { injuryUnderNotice } from './rules/injury-under-notice.ts'
import { instructionsAgainstLaw } from './rules/instructions-against-law.ts'
import { languageWithoutSignalWords } from './rules/language-without-signal-words.ts'
import { linkedHeadingWithoutId } from './rules/linked-heading-without-id.ts'
import { lookAlikeTag } from './rules/look-alike-tag.ts'
import { messageAfterStep } from './rules/message-after-step.ts'
import { messageDiffersInTranslation } from './rules/message-differs-in-translation.ts'
import { messageInCapitals } from './rules/message-in-capitals.ts'
import { messageOutOfOrder } from './rules/message-out-of-order.ts'
import { messageWithoutHazard } from './rules/message-without-hazard.ts'
import { notFitted } from './rules/not-fitted.ts'
import { outputWithoutPrecondition } from './rules/output-without-precondition.ts'
import { overlappingAddress } from './rules/overlapping-address.ts'
import { panelTextTooSmall } from './rules/panel-text-too-small.ts'
import { partAgainstKind } from './rules/part-against-kind.ts'
import { positionOffPlan } from './rules/position-off-plan.ts'
import { positionOutsideArea } from './rules/position-outside-area.ts'
import { quantityAboveDevices } from './rules/quantity-above-devices.ts'
import { quantityBelowDevices } from './rules/quantity-below-devices.ts'
import { readingAgainstSignal } from './rules/reading-against-signal.ts'
import { repeatedMessage } from './rules/repeated-message.ts'
import { revisionAgainstRegister } from './rules/revision-against-register.ts'
import { riskWithoutMessage } from './rules/risk-without-message.ts'
import { safetyDistanceTooShort } from './rules/safety-distance-too-short.ts'
import { sameAlarmText } from './rules/same-alarm-text.ts'
import { secondSignalWord } from './rules/second-signal-word.ts'
import { sectionMessageAfterStep } from './rules/section-message-after-step.ts'
import { setUpWithoutSlowRun } from './rules/set-up-without-slow-run.ts'
import { settingOutOfLine } from './rules/setting-out-of-line.ts'
import { settingOutOfRange } from './rules/setting-out-of-range.ts'
import { sharedPosition } from './rules/shared-position.ts'
import { sheetMissing } from './rules/sheet-missing.ts'
import { sheetOutOfRange } from './rules/sheet-out-of-range.ts'
import { sheetWithoutDrawing } from './rules/sheet-without-drawing.ts'
import { sheetWithoutText } from './rules/sheet-without-text.ts'
import { signalAgainstCard } from './rules/signal-against-card.ts'
import { signalAgainstDevice } from './rules/signal-against-device.ts'
import { signalNotOnSheet } from './rules/signal-not-on-sheet.ts'
import { spareWithDevice } from './rules/spare-with-device.ts'
import { stockOfSupersededPart } from './rules/stock-of-superseded-part.ts'
import { successorOfAnotherKind } from './rules/successor-of-another-kind.ts'
import { supersededDrawing } from './rules/superseded-drawing.ts'
import { supersededPart } from './rules/superseded-part.ts'
import { supersessionCycle } from './rules/supersession-cycle.ts'
import { surplusSheet } from './rules/surplus-sheet.ts'
import { symbolAddressDiffers } from './rules/symbol-address-differs.ts'
import { symbolNotInController } from './rules/symbol-not-in-controller.ts'
import { tagGrammar } from './rules/tag-grammar.ts'
import { tagNotOnSheet } from './rules/tag-not-on-sheet.ts'
import { tagTwiceOnPlan } from './rules/tag-twice-on-plan.ts'
import { taskWithoutInterval } from './rules/task-without-interval.ts'
import { technologyAgainstKind } from './rules/technology-against-kind.ts'
import { termReplacedByAnother } from './rules/term-replaced-by-another.ts'
import { titleOfAnotherDrawing } from './rules/title-of-another-drawing.ts'
import { tooManySignals } from './rules/too-many-signals.ts'
import { translationMissing } from './rules/translation-missing.ts'
import { translationOutdated } from './rules/translation-outdated.ts'
import { translationUnstamped } from './rules/translation-unstamped.ts'
import { triggerDeviceNotListed } from './rules/trigger-device-not-listed.ts'
import { unitAgainstSignal } from './rules/unit-against-signal.ts'
import { unknownAlarm } from './rules/unknown-alarm.ts'
import { unknownAnchor } from './rules/unknown-anchor.ts'
import { unknownArea } from './rules/unknown-area.ts'
import { unknownCallout } from './rules/unknown-callout.ts'
import { unknownCard } from './rules/unknown-card.ts'
import { unknownCaution } from './rules/unknown-caution.ts'
import { unknownDrawing } from './rules/unknown-drawing.ts'
import { unknownEnergySource } from './rules/unknown-energy-source.ts'
import { unknownHazard } from './rules/unknown-hazard.ts'
import { unknownImage } from './rules/unknown-image.ts'
import { unknownIsolationPoint } from './rules/unknown-isolation-point.ts'
import { unknownLockout } from './rules/unknown-lockout.ts'
import { unknownNumberInProse } from './rules/unknown-number-in-prose.ts'
import { unknownOption } from './rules/unknown-option.ts'
import { unknownPage } from './rules/unknown-page.ts'
import { unknownPart } from './rules/unknown-part.ts'
import { unknownSign } from './rules/unknown-sign.ts'
import { unknownTag } from './rules/unknown-tag.ts'
import { unknownTagInProse } from './rules/unknown-tag-in-prose.ts'
import { unknownTagOnDrawing } from './rules/unknown-tag-on-drawing.ts'
import { unknownTerm } from './rules/unknown-term.ts'
import { unknownTerminal } from './rules/unknown-terminal.ts'
import { unknownUnit } from './rules/unknown-unit.ts'
import { unknownZone } from './rules/unknown-zone.ts'
import { unreachablePage } from './rules/unreachable-page.ts'
import { unusedDrawing } from './rules/unused-drawing.ts'
import { unusedPart } from './rules/unused-part.ts'
import { vagueAvoidance } from './rules/vague-avoidance.ts'
import { warningInPlainText } from './rules/warning-in-plain-text.ts'
import { wearPartWithoutTask } from './rules/wear-part-without-task.ts'
import { wrongConsequenceVerb } from './rules/wrong-consequence-verb.ts'
import { wrongContact } from './rules/wrong-contact.ts'
import { wrongKind } from './rules/wrong-kind.ts'
import { wrongSheetNumber } from './rules/wrong-sheet-number.ts'
import { wrongSignalState } from './rules/wrong-signal-state.ts'
import { wrongSignalWord } from './rules/wrong-signal-word.ts'
import { trainingRules } from './training-rules.ts'
import { wordingRules } from './wording-rules.ts'

/** Every rule that compares the pages and the data with the machine. A new rule is one line here, or in the list of its subject. */
export const rules: readonly Rule[] = [
  addressAgainstType,
  addressGrammar,
  addressNotInIoList,
  adjusterDiffers,
  alarmWithoutDevice,
  alarmWithoutRecovery,
  bareNumber,
  bareTag,
  calloutOffPicture,
  calloutOutOfOrder,
  calloutWithoutText,
  cardWithoutSignals,
  causeAgainstAlarm,
  causeOutOfOrder,
  channelOutOfRange,
  contactContradicted,
  dangerOverused,
  deviceWithoutDescription,
  deviceWithoutPage,
  deviceWithoutSignal,
  draftPage,
  duplicateAddress,
  duplicateAlarm,
  duplicateChannel,
  duplicateDrawing,
  duplicateId,
  duplicatePart,
  duplicateRecovery,
  duplicateSetting,
  duplicateSymbol,
  duplicateTag,
  duplicateTerminal,
  emptyRange,
  exchangedDescriptions,
  fewerSignalsThanOthers,
  formatWithoutSetting,
  gapTooSmall,
  halfPosition,
  harmAgainstHazard,
  impossiblePanel,
  incompleteHazard,
  incompleteSafetyMessage,
  injuryUnderNotice,
  instructionsAgainstLaw,
  languageWithoutSignalWords,
  linkedHeadingWithoutId,
  lookAlikeTag,
  messageAfterStep,
  messageDiffersInTranslation,
  factDiffersInTranslation,
  messageInCapitals,
  messageOutOfOrder,
  messageWithoutHazard,
  notFitted,
  outputWithoutPrecondition,
  overlappingAddress,
  panelTextTooSmall,
  partAgainstKind,
  positionOffPlan,
  positionOutsideArea,
  quantityAboveDevices,
  quantityBelowDevices,
  readingAgainstSignal,
  repeatedMessage,
  revisionAgainstRegister,
  riskWithoutMessage,
  safetyDistanceTooShort,
  sameAlarmText,
  secondSignalWord,
  sectionMessageAfterStep,
  setUpWithoutSlowRun,
  settingOutOfLine,
  settingOutOfRange,
  sharedPosition,
  sheetMissing,
  sheetOutOfRange,
  sheetWithoutDrawing,
  sheetWithoutText,
  signalAgainstCard,
  signalAgainstDevice,
  signalNotOnSheet,
  spareWithDevice,
  stockOfSupersededPart,
  successorOfAnotherKind,
  supersededDrawing,
  supersededPart,
  supersessionCycle,
  surplusSheet,
  symbolAddressDiffers,
  symbolNotInController,
  tagGrammar,
  tagNotOnSheet,
  tagTwiceOnPlan,
  taskWithoutInterval,
  technologyAgainstKind,
  titleOfAnotherDrawing,
  tooManySignals,
  translationMissing,
  translationOutdated,
  translationUnstamped,
  triggerDeviceNotListed,
  unitAgainstSignal,
  unknownAlarm,
  unknownAnchor,
  unknownArea,
  unknownCard,
  unknownCallout,
  unknownCaution,
  unknownDrawing,
  unknownEnergySource,
  unknownHazard,
  unknownImage,
  unknownIsolationPoint,
  unknownLockout,
  unknownNumberInProse,
  unknownOption,
  unknownPage,
  unknownPart,
  unknownSign,
  unknownTag,
  unknownTagInProse,
  unknownTagOnDrawing,
  termReplacedByAnother,
  unknownTerm,
  unknownTerminal,
  unknownUnit,
  unknownZone,
  unreachablePage,
  unusedDrawing,
  unusedPart,
  vagueAvoidance,
  warningInPlainText,
  wearPartWithoutTask,
  wrongConsequenceVerb,
  wrongContact,
  wrongKind,
  wrongSheetNumber,
  wrongSignalState,
  wrongSignalWord,
  ...checkoutRules,
  ...energyRules,
  ...trainingRules,
  ...wordingRules,
].sort((a, b) => compare(a.id, b.id))
