import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { SaxesParser } from 'saxes'
import { describe, expect, test } from 'vitest'
import { reportJunit } from '../../src/report/junit.ts'
import type { Finding } from '../../src/source/finding.ts'
import { readCases } from '../cases.ts'
import { judgeLoaded, loadSound } from '../sound-machine.ts'

interface Element {
  name: string
  attributes: Record<string, string>
  children: Element[]
  text: string
}

/** Parses XML as strictly as XML 1.0 asks; throws where it is not well formed. */
function parseXml(xml: string): Element {
  const root: Element = { name: '', attributes: {}, children: [], text: '' }
  const open = [root]
  const parser = new SaxesParser()
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    const element: Element = { name, attributes, children: [], text: '' }
    open.at(-1)?.children.push(element)
    open.push(element)
  })
  parser.on('text', (text) => {
    const top = open.at(-1)
    if (top) top.text += text
  })
  parser.on('closetag', () => void open.pop())
  parser.write(xml).close()
  return root
}

/**
 * What the XSD of the Jenkins xUnit plugin asks (junit-10.xsd, from memory): which elements stand in which, and
 * which attributes each must and may have.
 */
const shape: Record<string, { within: string[]; must: string[]; may: string[] }> = {
  testsuites: { within: [''], must: [], may: ['name', 'time', 'tests', 'failures', 'disabled', 'errors'] },
  testsuite: {
    within: ['testsuites'],
    must: ['name', 'tests'],
    may: ['failures', 'errors', 'time', 'disabled', 'skipped', 'timestamp', 'hostname', 'id', 'package'],
  },
  testcase: { within: ['testsuite'], must: ['name'], may: ['classname', 'assertions', 'time', 'status'] },
  failure: { within: ['testcase'], must: [], may: ['type', 'message'] },
  skipped: { within: ['testcase'], must: [], may: ['message'] },
  'system-out': { within: ['testcase', 'testsuite'], must: [], may: [] },
}

function checkShape(element: Element, parent: string): void {
  const wanted = shape[element.name]
  expect(wanted, element.name).toBeDefined()
  expect(wanted?.within).toContain(parent)
  const keys = Object.keys(element.attributes)
  for (const key of wanted?.must ?? []) expect(keys).toContain(key)
  for (const key of keys) expect([...(wanted?.must ?? []), ...(wanted?.may ?? [])]).toContain(key)
  for (const child of element.children) checkShape(child, element.name)
}

function junit(...args: Parameters<typeof reportJunit>): Element {
  const { children } = parseXml(reportJunit(...args))
  expect(children).toHaveLength(1)
  const [root] = children
  if (!root) throw new Error('no root')
  checkShape(root, '')
  return root
}

const summaryOf = (findings: readonly Finding[]) => ({
  errors: findings.filter(({ severity }) => severity === 'error').length,
  warnings: 0,
  notes: 0,
})
const place = { file: 'pages/a.mdx', line: 4, column: 5, endLine: 4, endColumn: 11 }
const finding: Finding = { rule: 'unknown-tag', severity: 'error', message: 'no device has the tag `PS-103`', place, help: 'look' }

test('every case of every rule has the form, and its numbers add up', () => {
  const folder = 'tests/fixtures/broken'
  for (const name of readdirSync(folder).filter((it) => it.startsWith('unknown-') || it.includes('acceptance'))) {
    for (const { files } of readCases(readFileSync(`${folder}/${name}`, 'utf8'))) {
      const loaded = loadSound(files)
      const { findings, accepted } = judgeLoaded(loaded)
      const root = junit(findings, loaded.texts, summaryOf(findings), accepted)
      const count = (key: string) => root.children.reduce((sum, suite) => sum + Number(suite.attributes[key]), 0)
      const cases = root.children.flatMap((suite) => suite.children)
      const holding = (child: string) => cases.filter(({ children }) => children.some((it) => it.name === child)).length
      expect([count('tests'), root.attributes.tests]).toEqual([findings.length + accepted.length + 1, String(cases.length)])
      expect([count('failures'), root.attributes.failures]).toEqual([holding('failure'), String(holding('failure'))])
      expect([count('skipped'), holding('skipped')]).toEqual([accepted.length, accepted.length])
    }
  }
}, 60_000)

describe('a finding', () => {
  const texts = new Map([['pages/a.mdx', 'a\nb\nc\nSee PS-103 & more\n']])

  test('of an error is a failure with the whole report', () => {
    const [, suite] = junit([finding], texts, summaryOf([finding])).children
    const [only] = suite?.children ?? []
    expect(suite?.attributes.name).toBe('pages/a.mdx')
    expect(only?.attributes).toEqual({ classname: 'pages/a.mdx', name: '4:5 no device has the tag `PS-103` [unknown-tag]' })
    expect(only?.children[0]).toMatchObject({ name: 'failure', attributes: { message: finding.message, type: 'unknown-tag' } })
    expect(only?.children[0]?.text).toContain('4 | See PS-103 & more')
    expect(only?.children[0]?.text).toContain('help: look')
  })

  test('of a warning passes and is told', () => {
    const [, suite] = junit([{ ...finding, severity: 'warning' }], texts, summaryOf([])).children
    expect(suite?.attributes.failures).toBe('0')
    expect(suite?.children[0]?.children.map(({ name }) => name)).toEqual(['system-out'])
  })
})

test('a clean check is one test that passes', () => {
  const root = junit([], new Map(), summaryOf([]))
  expect([root.attributes.tests, root.attributes.failures]).toEqual(['1', '0'])
})

test('whatever an author writes, the report is XML', () => {
  const hostile = fc.string({
    unit: fc.oneof(fc.constantFrom('<', '&', '"', ']]>', '\u0000', '\u001b', '\ud800', '\uffff', '\n'), fc.string({ unit: 'binary', maxLength: 3 })),
  })
  fc.assert(
    fc.property(hostile, hostile, hostile, (message, file, line) => {
      const own = { ...finding, message, place: { ...place, file, line: 1 }, note: line }
      const [, suite] = junit([own], new Map([[file, line]]), summaryOf([own])).children
      expect(suite?.children).toHaveLength(1)
    }),
    { numRuns: 300 },
  )
})
