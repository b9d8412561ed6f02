import type { AcceptedFinding } from '../check/accept.ts'
import type { InputFile } from '../model/input-file.ts'
import type { Machine } from '../model/machine.ts'
import type { Release } from '../site/handover.ts'
import { version } from './version.ts'

/** A machine without errors, and what the check says of it. */
export interface Sound {
  machine: Machine
  counts: { errors: number; warnings: number; notes: number }
  accepted: readonly AcceptedFinding[]
}

/** All that the pages of a machine are made of: its files, its serial number, the version of the tool, and what the check says, which the about page tells. */
export function releaseInputs({ machine, counts, accepted }: Sound): InputFile[] {
  return [
    ...machine.inputs,
    { path: 'fettle', sha256: version },
    { path: 'serial', sha256: machine.unit.serial },
    { path: 'check', sha256: JSON.stringify([counts.errors, counts.warnings, counts.notes, accepted.map(asTold)]) },
  ]
}

/** As accepted.yaml names its file: what a release tells does not depend on where it was built. */
export function asTold({ finding, acceptance: { file, reason, until } }: AcceptedFinding): Release['accepted'][number] {
  return { rule: finding.rule, file: file.value, line: finding.place.line, message: finding.message, reason, until: until.value }
}
