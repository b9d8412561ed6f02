import type { Severity } from '../source/finding.ts'
import type { Located } from '../source/place.ts'

/** A severity that machine.yaml gives a rule. */
export interface RuleSetting {
  rule: Located<string>
  severity: Located<Severity>
}

/** An entry of accepted.yaml: a finding that somebody has looked at, and why it may stay for a while. */
export interface Acceptance {
  rule: Located<string>
  /** As written: from the machine folder, or `content/…` for a shared page. */
  file: Located<string>
  /** The file as findings name it. */
  path: string
  /** Whether there is such a file. */
  isFile: boolean
  /** What findings put before a path of the machine folder: `example-machine/`, or empty. */
  folder: string
  /** The message of the finding, or a part of it. */
  message: Located<string>
  reason: string
  /** The last day on which it holds, as `2027-03-31`. */
  until: Located<string>
}
