import type { Finding, RuleTexts } from '../source/finding.ts'
import type { Place } from '../source/place.ts'
import { inCell } from './short.ts'

/** Findings as SARIF 2.1.0 (OASIS), for the reviews of code hosts. Every rule is described, found or not. */
export function reportSarif(findings: readonly Finding[], rules: readonly RuleTexts[], version: string): string {
  const index = new Map(rules.map(({ id }, at) => [id, at]))
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'Fettle',
            semanticVersion: version,
            rules: rules.map(({ id, severity, summary, why, source }) => ({
              id,
              shortDescription: { text: summary },
              fullDescription: { text: why },
              help: { text: `${why} Source: ${source}.` },
              defaultConfiguration: { level: severity },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        results: findings.map(({ rule, severity, message, place, related, note, help }) => ({
          ruleId: rule,
          ...(index.has(rule) ? { ruleIndex: index.get(rule) } : {}),
          level: severity,
          message: { text: [inCell(place) + message, ...(note ? [`note: ${note}`] : []), ...(help ? [`help: ${help}`] : [])].join('\n') },
          locations: [location(place)],
          ...(related && related.length > 0
            ? { relatedLocations: related.map((it, id) => ({ id, message: { text: inCell(it.place) + it.label }, ...location(it.place) })) }
            : {}),
        })),
      },
    ],
  }
  return `${JSON.stringify(log, null, 2)}\n`
}

function location({ file, line, column, endLine, endColumn, cell }: Place) {
  return {
    physicalLocation: {
      artifactLocation: { uri: uriOf(file) },
      region: { startLine: line, startColumn: column, endLine, endColumn },
    },
    ...(cell === undefined ? {} : { logicalLocations: [{ fullyQualifiedName: cell, kind: 'cell' }] }),
  }
}

/** A path as a URI relative to where the check was started; one on another Windows drive is absolute. */
function uriOf(file: string): string {
  const [drive, path] = /^[A-Za-z]:\//.test(file) ? [`file:///${file.slice(0, 3)}`, file.slice(3)] : ['', file]
  return drive + path.toWellFormed().split('/').map(encodeURIComponent).join('/')
}
