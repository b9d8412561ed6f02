import type { AcceptedFinding } from '../check/accept.ts'
import type { Finding } from '../source/finding.ts'
import { framesOf } from './frame.ts'
import { inCell, where } from './short.ts'
import { reportFinding, type Summary } from './text.ts'
import { oneLine } from './visible.ts'

/** One line of a CI report. An error has failed, an accepted finding is skipped, a warning or note passes and says so. */
interface TestCase {
  finding: Finding
  /** Why the finding may stay, where it is accepted. */
  accepted?: string
}

/**
 * Findings as JUnit XML, for the test reports of CI: a test suite a file, a test case a finding, and one suite for
 * the check itself, so that a clean run is no empty report. Source of the form: the XSD of the Jenkins xUnit plugin,
 * from memory. It carries no time and no host.
 */
export function reportJunit(
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
  summary: Summary,
  accepted: readonly AcceptedFinding[] = [],
): string {
  const frameOf = framesOf(texts)
  const cases: TestCase[] = [
    ...findings.map((finding) => ({ finding })),
    ...accepted.map(({ finding, acceptance: { reason, until } }) => ({ finding, accepted: `accepted until ${until.value}: ${reason}` })),
  ]
  const suites = [...Map.groupBy(cases, ({ finding }) => finding.place.file)].map(([file, own]) =>
    suite(
      file,
      own.map((it) => testCase(it, reportFinding(it.finding, frameOf))),
    ),
  )
  const run = `    ${tag('testcase', { classname: 'fettle', name: 'every file was compared with the machine' }, '/')}\n`
  const all = [suite('fettle check', [{ xml: run, failed: false, skipped: false }]), ...suites]
  const total = { tests: cases.length + 1, failures: summary.errors, errors: 0 }
  return `<?xml version="1.0" encoding="UTF-8"?>\n${tag('testsuites', { name: 'fettle check', ...total })}\n${all.join('')}</testsuites>\n`
}

interface WrittenCase {
  xml: string
  failed: boolean
  skipped: boolean
}

function testCase({ finding, accepted }: TestCase, report: string): WrittenCase {
  const { place, message, rule, severity } = finding
  const failed = accepted === undefined && severity === 'error'
  const name = `${place.line}:${place.column} ${inCell(place)}${oneLine(message)} [${rule}]`
  const content = failed
    ? `${tag('failure', { message: oneLine(message), type: rule })}${escaped(report)}</failure>`
    : accepted === undefined
      ? `<system-out>${escaped(report)}</system-out>`
      : tag('skipped', { message: oneLine(accepted) }, '/')
  return {
    xml: `    ${tag('testcase', { classname: where(place).replace(/:\d+:\d+$/, ''), name })}\n      ${content}\n    </testcase>\n`,
    failed,
    skipped: accepted !== undefined,
  }
}

function suite(name: string, cases: readonly WrittenCase[]): string {
  const failures = cases.filter(({ failed }) => failed).length
  const skipped = cases.filter((it) => it.skipped).length
  return `  ${tag('testsuite', { name: oneLine(name), tests: cases.length, failures, errors: 0, skipped })}\n${cases.map(({ xml }) => xml).join('')}  </testsuite>\n`
}

function tag(name: string, attributes: Readonly<Record<string, string | number>>, end: '/' | '' = ''): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value)).replaceAll('"', '&quot;')}"`)
  return `<${name}${written.join('')}${end}>`
}

/** What XML 1.0 has no sign for becomes U+FFFD. */
const unwritable = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu

function escaped(text: string): string {
  return text.toWellFormed().replace(unwritable, '\ufffd').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
}
