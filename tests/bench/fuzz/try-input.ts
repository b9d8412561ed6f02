import { reportJson } from '../../../src/report/json.ts'
import { reportShort } from '../../../src/report/short.ts'
import { reportText } from '../../../src/report/text.ts'
import type { Finding } from '../../../src/source/finding.ts'
import type { Place } from '../../../src/source/place.ts'
import { checkFiles } from '../example.ts'
import { decodeForPlaces } from './decode-for-places.ts'
import type { Input } from './inputs.ts'

export interface Outcome {
  index: number
  what: string
  timeMs: number
  /** What must not be: a crash, or a finding that is not as it should be. */
  faults: readonly string[]
  findings: number
}

/** Checks an input and everything that its findings must hold to. */
export function tryInput({ index, what, files }: Input): Outcome {
  const start = performance.now()
  try {
    const { findings, texts } = checkFiles(files)
    const timeMs = performance.now() - start
    const counts = { errors: 0, warnings: 0, notes: 0, pages: 0, devices: 0, alarms: 0, parts: 0, drawings: 0 }
    reportText(findings, texts, counts)
    JSON.parse(reportJson(findings, undefined, counts))
    const short = reportShort(findings).split('\n').length - 1
    const faults = findings.flatMap((finding) => faultsOf(finding, files))
    if (findings.length > 0 && short !== findings.length) faults.push(`the short report has ${short} lines for ${findings.length} findings`)
    return { index, what, timeMs, faults, findings: findings.length }
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error)
    return { index, what, timeMs: performance.now() - start, faults: [`crash: ${stack.split('\n').slice(0, 4).join(' ')}`], findings: 0 }
  }
}

function faultsOf({ rule, message, note, help, place, related = [] }: Finding, files: Input['files']): string[] {
  const faults = [place, ...related.map((it) => it.place)].flatMap((it) => placeFault(it, files))
  if (message.trim() === '') faults.push('a message is empty')
  // In backticks stands what the author wrote.
  for (const text of [message, note, help, ...related.map(({ label }) => label)]) {
    const [word] = /\bundefined\b|\[object |\bNaN\b/.exec(text ?? '') ?? []
    if (word !== undefined && !isWritten(word, files)) faults.push(`a text speaks of our values: ${text}`)
  }
  return faults.map((fault) => `${rule}: ${fault}`)
}

/** Whether the author wrote it: the finding quotes what stands in a file. */
const isWritten = (word: string, files: Input['files']) => [...files.values()].some((content) => decodeForPlaces(content).includes(word))

/** A folder as a whole has the place of the file that it lacks. */
function placeFault({ file, line, column, endLine, endColumn }: Place, files: Input['files']): string[] {
  const content = files.get(file)
  const at = `${file}:${line}:${column}-${endLine}:${endColumn}`
  if (content === undefined) return line === 1 && column === 1 && file === 'machine.yaml' ? [] : [`there is no file at ${at}`]
  if (endLine < line || (endLine === line && endColumn < column)) return [`${at} ends before it begins`]
  const lines = decodeForPlaces(content).split(/\r\n|\n|\r/)
  const inside = (row: number, col: number) => row >= 1 && row <= lines.length && col >= 1 && col <= (lines[row - 1] ?? '').length + 2
  return inside(line, column) && inside(endLine, endColumn) ? [] : [`${at} is outside its file of ${lines.length} lines`]
}
