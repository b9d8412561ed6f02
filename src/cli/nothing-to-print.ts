import type { SheetKind } from '../print/sheets.ts'

/** Why there is nothing to print of a kind, and where it would come from. */
export const nothingToPrint: Readonly<Record<SheetKind | 'safety', string>> = {
  safety:
    'no chapter of the manual is about safety: name one as `residualRisks` or `protectiveEquipment` under `manual.chapters` in machine.yaml, or write `<SafetySummary />` into one',
  lockout: 'the machine has no page under pages/lockout',
  lesson: 'the machine has no lesson, neither of its own nor a shared one that fits a device of it',
  alarms: 'the machine has no alarm: its list is `alarms` under `data` in machine.yaml',
  parts: 'the machine has no part: its list is `parts` under `data` in machine.yaml',
  'set-up': 'the machine has no product to be set up for: their list is `formats` under `data` in machine.yaml',
  checkout:
    'nothing is computed that could be measured at a device: what it is computed of stands in checkout.yaml and in the lists of signals and cards',
  'sign-off': 'no role of training.yaml is asked to take a lesson',
}
