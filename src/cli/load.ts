import { join } from 'node:path'
import type { AcceptedFinding } from '../check/accept.ts'
import { judge } from '../check/judge.ts'
import { rules } from '../check/rules.ts'
import { checkLoaded } from '../check/run.ts'
import { limitsIn } from '../checkout/checkout-of.ts'
import { loadMachine } from '../load/load-machine.ts'
import type { Loaded } from '../load/loaded.ts'
import { type Memory, noMemory } from '../load/memory.ts'
import { readDrawingTexts } from '../load/pdf/drawing-texts.ts'
import { textCache } from '../load/pdf/text-cache.ts'
import { type Coverage, coverageOf } from '../model/coverage.ts'
import { graphOf } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import type { Finding } from '../source/finding.ts'
import { everyRule } from './every-rule.ts'
import { type Options, UsageError } from './options.ts'
import { openFolders } from './paths.ts'
import { today } from './today.ts'

export interface Checked {
  loaded: Loaded
  /** The unit that was asked for; undefined when the folder is not a machine. */
  machine: Machine | undefined
  findings: readonly Finding[]
  /** Found, and left for a while by accepted.yaml. */
  accepted: readonly AcceptedFinding[]
}

/** Reads a machine folder and runs every rule: over all its units, or over the one that was asked for. */
export async function checkFolder(
  path: string,
  options: Options,
  memory: Memory = noMemory,
  { machine, shared } = openFolders(path, options),
): Promise<Checked> {
  const cache = options.has('no-cache') ? undefined : textCache(join(path, '.fettle/drawing-text'))
  const drawingTexts = await readDrawingTexts(machine, cache)
  const loaded = loadMachine(machine, shared, options.get('serial'), drawingTexts, memory)
  const serial = options.get('serial')
  if (serial !== undefined && loaded.machines.length === 0 && !loaded.findings.some(({ severity }) => severity === 'error')) {
    throw new UsageError(`machine.yaml has no unit with the serial number \`${serial}\``)
  }
  const whole = serial === undefined && !loaded.findings.some(({ severity }) => severity === 'error')
  const day = today()
  const { findings, accepted } = judge(checkLoaded(loaded, rules, day), { ...loaded, known: everyRule, today: day, whole })
  return { loaded, machine: loaded.machines[0], findings, accepted }
}

/** The machine of a folder without errors. Of any other nothing is printed, since it may be wrong: `what` names it, and the reason is told. */
export async function machineToPrint(path: string, options: Options, command: string, what: string): Promise<Machine | undefined> {
  const { machine, findings } = await checkFolder(path, options)
  const { errors } = countFindings(findings)
  if (machine && errors === 0) return machine
  process.stderr.write(
    `fettle ${command}: the folder has ${errors} error${errors === 1 ? '' : 's'}, and a ${what} from it may be wrong; \`fettle check\` shows them\n`,
  )
  return undefined
}

export function countFindings(findings: readonly Finding[]): { errors: number; warnings: number; notes: number } {
  const count = (severity: Finding['severity']) => findings.filter((finding) => finding.severity === severity).length
  return { errors: count('error'), warnings: count('warning'), notes: count('note') }
}

/** What the manual of a unit covers; nothing where the folder is no machine. */
export function sharesOf(machine: Machine | undefined): Coverage[] {
  if (!machine) return []
  const graph = graphOf(machine)
  return coverageOf(machine, graph, limitsIn(machine, graph))
}
