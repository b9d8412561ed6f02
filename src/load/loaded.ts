import type { Finding } from '../source/finding.ts'
import type { Machine } from '../model/machine.ts'

/** What a folder holds, for all its units. `machine` is missing when the folder is not a machine at all. */
export interface Loaded {
  /** One linked machine for each different set of options among the units, in the order of machine.yaml. */
  machines: readonly Machine[]
  /** What is wrong with the files themselves; what rules find comes on top. */
  findings: readonly Finding[]
  /** Text of every file read, by the path that findings show, for the frames of a report. */
  texts: ReadonlyMap<string, string>
}
