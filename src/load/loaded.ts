import type { Acceptance, RuleSetting } from '../model/acceptance.ts'
import type { ReadData } from '../model/lost-data.ts'
import type { Machine } from '../model/machine.ts'
import type { Finding } from '../source/finding.ts'

/** Of a folder that is no machine. */
export const noRows: ReadData['rows'] = {
  devices: [],
  signals: [],
  cards: [],
  parts: [],
  drawings: [],
  alarms: [],
  formats: [],
  energy: [],
  hazards: [],
  checkout: [],
  symbols: [],
}

/** What a folder holds, for all its units. */
export interface Loaded extends ReadData {
  /**
   * One linked machine for each different set of options among the units, in the order of machine.yaml, or
   * the one unit that was asked for. Empty when the folder is not a machine, or has no such unit.
   */
  machines: readonly Machine[]
  /** What is wrong with the files themselves; what rules find comes on top. */
  findings: readonly Finding[]
  /** Text of every file read, by the path that findings show, for the frames of a report. */
  texts: ReadonlyMap<string, string>
  /** Severities that machine.yaml gives to rules. */
  settings: readonly RuleSetting[]
  /** Entries of accepted.yaml. */
  acceptances: readonly Acceptance[]
}
