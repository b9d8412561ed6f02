import { readdirSync, readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import formatsPlugin from 'ajv-formats'
import { expect, test } from 'vitest'
import { everyRule as all } from '../../src/cli/every-rule.ts'
import { reportSarif } from '../../src/report/sarif.ts'
import { placeOfCell } from '../../src/source/cell.ts'
import type { Finding } from '../../src/source/finding.ts'
import { readCases } from '../cases.ts'
import { judgeLoaded, loadSound } from '../sound-machine.ts'

const ajv = new Ajv({ strict: false, allErrors: true })
formatsPlugin.default(ajv)
const valid = ajv.compile(JSON.parse(readFileSync('tests/fixtures/sarif/sarif-schema-2.1.0.json', 'utf8')))

/** The parts of a log that are read here. */
interface Log {
  runs: {
    tool: { driver: { rules: { id: string; help: { markdown: string } }[] } }
    columnKind: string
    results: {
      ruleId: string
      ruleIndex: number
      level: string
      message: { text: string }
      locations: { physicalLocation: { artifactLocation: { uri: string; uriBaseId?: string }; region: object }; logicalLocations?: object[] }[]
      partialFingerprints: Record<string, string>
      suppressions: object[]
      relatedLocations?: { message: { text: string } }[]
    }[]
  }[]
}

function sarif(findings: readonly Finding[]): Log['runs'][number] {
  const log = JSON.parse(reportSarif(findings, all, '1.2.3')) as Log
  expect(valid(log), JSON.stringify(valid.errors)).toBe(true)
  const [run] = log.runs
  if (!run) throw new Error('the log has no run')
  return run
}

const place = { file: 'pages/a.mdx', line: 4, column: 5, endLine: 4, endColumn: 11 }
const finding: Finding = { rule: 'unknown-tag', severity: 'error', message: 'no device has the tag `PS-103`', place }

test('every case of every rule is valid SARIF', () => {
  const folder = 'tests/fixtures/broken'
  const findings = readdirSync(folder).flatMap((name) =>
    readCases(readFileSync(`${folder}/${name}`, 'utf8')).flatMap(({ files }) => judgeLoaded(loadSound(files)).findings),
  )
  expect(findings.length).toBeGreaterThan(50)
  const { results, tool } = sarif(findings)
  expect(results).toHaveLength(findings.length)
  for (const { ruleId, ruleIndex } of results) expect(tool.driver.rules[ruleIndex]?.id).toBe(ruleId)
}, 180_000)

test('a log without findings has empty results', () => expect(sarif([]).results).toEqual([]))

test('the schema refuses a wrong log', () => {
  const log = JSON.parse(reportSarif([finding], all, '1.2.3').replace('"level": "error"', '"level": "fatal"'))
  expect(valid(log)).toBe(false)
})

test('columns are counted as ours are', () => {
  const { columnKind, results } = sarif([finding])
  expect(columnKind).toBe('utf16CodeUnits')
  expect(results[0]?.locations[0]?.physicalLocation.region).toEqual({ startLine: 4, startColumn: 5, endLine: 4, endColumn: 11 })
})

test('a cell of a workbook is a logical location, and named in the message', () => {
  const { results } = sarif([{ ...finding, place: placeOfCell('bom.xlsx', 'Parts', 7, 3) }])
  expect(results[0]?.message.text).toBe('Parts!C7: no device has the tag `PS-103`')
  expect(results[0]?.locations[0]?.logicalLocations).toEqual([{ fullyQualifiedName: 'Parts!C7', kind: 'cell' }])
  expect(results[0]?.locations[0]?.physicalLocation.region).toEqual({ startLine: 7, startColumn: 3, endLine: 7, endColumn: 4 })
})

test('facts, advice and second places come along', () => {
  const { results } = sarif([{ ...finding, note: 'a fact', help: 'do this', related: [{ label: 'first used here', place }] }])
  expect(results[0]?.message.text).toBe('no device has the tag `PS-103`\nnote: a fact\nhelp: do this')
  expect(results[0]?.relatedLocations?.[0]?.message.text).toBe('first used here')
})

test.each([
  ['pages/Störung #1.mdx', 'pages/St%C3%B6rung%20%231.mdx'],
  ['a:b/100%.mdx', 'a%3Ab/100%25.mdx'],
  ['../other/machine.yaml', '../other/machine.yaml'],
  ['D:/machines/a b/machine.yaml', 'file:///D:/machines/a%20b/machine.yaml'],
  ['pages/\ud800.mdx', 'pages/%EF%BF%BD.mdx'],
])('the file %s is the URI %s', (file, uri) => {
  const { results } = sarif([{ ...finding, place: { ...place, file } }])
  expect(results[0]?.locations[0]?.physicalLocation.artifactLocation.uri).toBe(uri)
})

test.each([
  ['pages/a.mdx', '%SRCROOT%'],
  ['D:/machines/machine.yaml', undefined],
])('the root of %s is %s', (file, root) => {
  const { results } = sarif([{ ...finding, place: { ...place, file } }])
  expect(results[0]?.locations[0]?.physicalLocation.artifactLocation.uriBaseId).toBe(root)
})

test('a finding keeps its fingerprint when its line moves, and equal ones differ', () => {
  const printsOf = (...findings: Finding[]) => sarif(findings).results.flatMap(({ partialFingerprints }) => Object.values(partialFingerprints))
  const lower = { ...finding, place: { ...place, line: 9, endLine: 9 } }
  expect(printsOf(lower)).toEqual(printsOf(finding))
  expect(new Set(printsOf(finding, lower, { ...finding, message: 'another' })).size).toBe(3)
})

test('every rule brings a text to read in the review', () => {
  const { tool } = sarif([])
  expect(tool.driver.rules.length).toBe(all.length)
  for (const { id, help } of tool.driver.rules) expect(help.markdown).toContain(`fettle explain ${id}`)
})
