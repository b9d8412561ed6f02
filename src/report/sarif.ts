import { createHash } from 'node:crypto'
import type { AcceptedFinding } from '../check/accept.ts'
import type { Finding, RuleTexts } from '../source/finding.ts'
import type { Place } from '../source/place.ts'
import { guardText } from './explain.ts'
import { inCell } from './short.ts'

/** Names the folder in which the check was started; a code host takes it for the root of the repository. */
const base = '%SRCROOT%'

/**
 * Findings as SARIF 2.1.0 (OASIS), for the reviews of code hosts. Every rule is described, found or not. An
 * accepted finding is a suppressed result with its reason.
 */
export function reportSarif(
  findings: readonly Finding[],
  rules: readonly RuleTexts[],
  version: string,
  accepted: readonly AcceptedFinding[] = [],
): string {
  const index = new Map(rules.map(({ id }, at) => [id, at]))
  const fingerprintOf = fingerprints()
  const result = (finding: Finding, suppressions: readonly object[]) => {
    const { rule, severity, message, place, related, note, help } = finding
    return {
      ruleId: rule,
      ...(index.has(rule) ? { ruleIndex: index.get(rule) } : {}),
      level: severity,
      message: { text: [inCell(place) + message, ...(note ? [`note: ${note}`] : []), ...(help ? [`help: ${help}`] : [])].join('\n') },
      locations: [location(place)],
      ...(related && related.length > 0
        ? { relatedLocations: related.map((it, id) => ({ id, message: { text: inCell(it.place) + it.label }, ...location(it.place) })) }
        : {}),
      partialFingerprints: { 'fettleFinding/v1': fingerprintOf(finding) },
      suppressions,
    }
  }
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Fettle', semanticVersion: version, rules: rules.map(describe) } },
        originalUriBaseIds: { [base]: { description: { text: 'The folder in which the check was started.' } } },
        columnKind: 'utf16CodeUnits',
        results: [
          ...findings.map((finding) => result(finding, [])),
          ...accepted.map(({ finding, acceptance: { reason, until } }) =>
            result(finding, [{ kind: 'external', status: 'accepted', justification: `${reason} (until ${until.value})` }]),
          ),
        ],
      },
    ],
  }
  return `${JSON.stringify(log, null, 2)}\n`
}

function describe({ id, severity, summary, why, source, guards }: RuleTexts) {
  const guard = guardText(guards)
  return {
    id,
    shortDescription: { text: summary },
    fullDescription: { text: why },
    help: {
      text: `${why} Source: ${source}. ${guard}`,
      markdown: `${summary}\n\n**Why it matters:** ${why}\n\n**Where it comes from:** ${source}\n\n${guard}\n\n\`fettle explain ${id}\` shows an example.`,
    },
    defaultConfiguration: { level: severity },
  }
}

/** Gives a finding the same value from run to run, wherever its line has moved to. Equal ones are counted from the top. */
function fingerprints(): (finding: Finding) => string {
  const seen = new Map<string, number>()
  return ({ rule, place, message }) => {
    const key = JSON.stringify([rule, place.file, message])
    const count = (seen.get(key) ?? 0) + 1
    seen.set(key, count)
    return createHash('sha256').update(`${key}${count}`).digest('hex').slice(0, 32)
  }
}

function location({ file, line, column, endLine, endColumn, cell }: Place) {
  return {
    physicalLocation: {
      artifactLocation: { uri: uriOf(file), ...(isAbsolute(file) ? {} : { uriBaseId: base }) },
      region: { startLine: line, startColumn: column, endLine, endColumn },
    },
    ...(cell === undefined ? {} : { logicalLocations: [{ fullyQualifiedName: cell, kind: 'cell' }] }),
  }
}

const isAbsolute = (file: string) => /^([A-Za-z]:)?\//.test(file)

/** A path as a URI relative to where the check was started; one on another Windows drive is absolute. */
function uriOf(file: string): string {
  const [drive, path] = /^[A-Za-z]:\//.test(file) ? [`file:///${file.slice(0, 3)}`, file.slice(3)] : ['', file]
  return drive + path.toWellFormed().split('/').map(encodeURIComponent).join('/')
}
