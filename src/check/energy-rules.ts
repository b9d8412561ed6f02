import type { Rule } from './rule.ts'
import { accumulatorBeyondLimits } from './rules/accumulator-beyond-limits.ts'
import { areaLeftEnergised } from './rules/area-left-energised.ts'
import { buildUpWithoutWatch } from './rules/build-up-without-watch.ts'
import { delayNoticeAgainstWait } from './rules/delay-notice-against-wait.ts'
import { energyWithoutHazard } from './rules/energy-without-hazard.ts'
import { gaugeOfTwoEnergies } from './rules/gauge-of-two-energies.ts'
import { impossibleStore } from './rules/impossible-store.ts'
import { incompleteCertificate } from './rules/incomplete-certificate.ts'
import { incompleteLockout } from './rules/incomplete-lockout.ts'
import { incompleteStore } from './rules/incomplete-store.ts'
import { inspectionOverdue } from './rules/inspection-overdue.ts'
import { lockoutProvisionMissing } from './rules/lockout-provision-missing.ts'
import { lockoutWithoutMessage } from './rules/lockout-without-message.ts'
import { magnitudeAgainstStore } from './rules/magnitude-against-store.ts'
import { missingDelayNotice } from './rules/missing-delay-notice.ts'
import { positionDoesNotIsolate } from './rules/position-does-not-isolate.ts'
import { sourceWithoutIsolation } from './rules/source-without-isolation.ts'
import { stepBesideLockout } from './rules/step-beside-lockout.ts'
import { stepMissingInTranslation } from './rules/step-missing-in-translation.ts'
import { stepWaitTooShort } from './rules/step-wait-too-short.ts'
import { storeNotStored } from './rules/store-not-stored.ts'
import { storedEnergyWithoutRelease } from './rules/stored-energy-without-release.ts'
import { taskWithoutLockout } from './rules/task-without-lockout.ts'
import { unfoundedNoLockout } from './rules/unfounded-no-lockout.ts'
import { unusedIsolationPoint } from './rules/unused-isolation-point.ts'
import { waitTooShort } from './rules/wait-too-short.ts'

/** The rules about energy sources and lockouts. A new one is one line here. */
export const energyRules: readonly Rule[] = [
  accumulatorBeyondLimits,
  areaLeftEnergised,
  buildUpWithoutWatch,
  delayNoticeAgainstWait,
  energyWithoutHazard,
  gaugeOfTwoEnergies,
  impossibleStore,
  incompleteCertificate,
  incompleteLockout,
  incompleteStore,
  inspectionOverdue,
  lockoutProvisionMissing,
  lockoutWithoutMessage,
  magnitudeAgainstStore,
  missingDelayNotice,
  positionDoesNotIsolate,
  sourceWithoutIsolation,
  stepBesideLockout,
  stepMissingInTranslation,
  stepWaitTooShort,
  storeNotStored,
  storedEnergyWithoutRelease,
  taskWithoutLockout,
  unfoundedNoLockout,
  unusedIsolationPoint,
  waitTooShort,
]
