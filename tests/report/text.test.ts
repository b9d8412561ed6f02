import { describe, expect, test } from 'vitest'
import { explainRule } from '../../src/report/explain.ts'
import { reportJson } from '../../src/report/json.ts'
import { reportSarif } from '../../src/report/sarif.ts'
import { reportShort } from '../../src/report/short.ts'
import { reportText } from '../../src/report/text.ts'
import { placeOfCell } from '../../src/source/cell.ts'
import type { Finding } from '../../src/source/finding.ts'

const texts = new Map([
  ['list.csv', 'tag\nPS-101\nPS-101\n'],
  ['a.mdx', 'See <Tag id="PS-103" />.\n'],
])
const duplicate: Finding = {
  rule: 'duplicate-tag',
  severity: 'error',
  message: 'the tag `PS-101` is used twice',
  place: { file: 'list.csv', line: 3, column: 1, endLine: 3, endColumn: 7 },
  related: [{ label: 'first used here', place: { file: 'list.csv', line: 2, column: 1, endLine: 2, endColumn: 7 } }],
  note: 'the addresses differ',
  help: 'give one of them another tag',
}
const unread: Finding = {
  rule: 'not-text',
  severity: 'warning',
  message: 'the file is not text',
  place: { file: 'photo.mdx', line: 1, column: 1, endLine: 1, endColumn: 1 },
}
const counts = { errors: 1, warnings: 1, notes: 0, pages: 12, devices: 1 }

describe('text', () => {
  test('shows both places, the fact and the advice, and counts at the end', () => {
    expect(reportText([duplicate, unread], texts, counts)).toBe(`list.csv:3:1: error: the tag \`PS-101\` is used twice [duplicate-tag]

  3 | PS-101
    | ^^^^^^

  list.csv:2:1: first used here

  2 | PS-101
    | ^^^^^^

  note: the addresses differ
  help: give one of them another tag

photo.mdx:1:1: warning: the file is not text [not-text]

12 pages, 1 device: 1 error, 1 warning
`)
  })

  test.each([
    [{ errors: 0, warnings: 0, notes: 0 }, '0 errors, 0 warnings\n'],
    [{ errors: 2, warnings: 0, notes: 1, pages: 1, parts: 0 }, '1 page, 0 parts: 2 errors, 0 warnings, 1 note\n'],
  ])('the last line of %o', (summary, expected) => expect(reportText([], texts, summary)).toBe(expected))

  test('says what share is covered above the last line, and nothing of what is not there', () => {
    const shares = [
      { what: 'devices with a page', have: 3, of: 4 },
      { what: 'pages in es', have: 0, of: 12 },
      { what: 'sensors with a lesson', have: 0, of: 0 },
    ]
    expect(reportText([], texts, { errors: 0, warnings: 0, notes: 0 }, shares)).toBe(
      'devices with a page  3 of 4\npages in es          0 of 12\n\n0 errors, 0 warnings\n',
    )
  })

  test('no text of an author moves the cursor, breaks a line or fills the screen', () => {
    const hostile = '\u001b[2J\u009b31m\n\r\u202e\u0000'
    const place = { file: `a${hostile}.mdx`, line: 1, column: 1, endLine: 1, endColumn: 2 }
    const finding: Finding = {
      ...duplicate,
      message: `no tag \`${hostile}${'x'.repeat(5000)}\``,
      place,
      related: [{ label: hostile, place }],
      note: hostile,
      help: hostile,
    }
    const report = reportText([finding], new Map([[place.file, hostile]]), counts)
    expect(report.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
    const [first = ''] = report.split('\n')
    expect(first.length).toBeLessThan(500)
    expect(first).toMatch(/ \[duplicate-tag\]$/)
    expect(reportShort([finding]).split('\n')).toEqual([first, ''])
  })
})

test('a cell of a workbook is named with its sheet, and the line and column stay numbers', () => {
  const place = placeOfCell('bom.xlsx', 'Spare parts', 3, 1)
  const finding: Finding = { ...duplicate, place, related: [{ label: 'first used here', place: placeOfCell('bom.xlsx', 'Spare parts', 2, 1) }] }
  const report = reportText([finding], new Map([["bom.xlsx!'Spare parts'", 'number\n100-01\n100-01']]), counts)
  expect(report.split('\n\n').slice(0, 4)).toEqual([
    "bom.xlsx:3:1: error: 'Spare parts'!A3: the tag `PS-101` is used twice [duplicate-tag]",
    '  3 | 100-01\n    | ^^^^^^',
    "  bom.xlsx:2:1: 'Spare parts'!A2: first used here",
    '  2 | 100-01\n    | ^^^^^^',
  ])
  const json = JSON.parse(reportJson([finding], 'tiny', counts)) as { findings: { cell: string; line: number; related: { cell: string }[] }[] }
  expect(json.findings[0]).toMatchObject({ cell: "'Spare parts'!A3", line: 3, column: 1, related: [{ cell: "'Spare parts'!A2" }] })
})

test('short holds the first lines only', () => {
  expect(reportShort([duplicate, unread])).toBe(
    'list.csv:3:1: error: the tag `PS-101` is used twice [duplicate-tag]\nphoto.mdx:1:1: warning: the file is not text [not-text]\n',
  )
  expect(reportShort([])).toBe('')
})

test('json has every field, in one order', () => {
  const report = reportJson([duplicate, unread], 'tiny', counts, [{ what: 'devices with a page', have: 3, of: 4 }])
  expect(report.endsWith('}\n')).toBe(true)
  expect(JSON.parse(report)).toEqual({
    machine: 'tiny',
    summary: { ...counts, coverage: [{ what: 'devices with a page', have: 3, of: 4 }] },
    findings: [
      {
        rule: 'duplicate-tag',
        severity: 'error',
        file: 'list.csv',
        line: 3,
        column: 1,
        endLine: 3,
        endColumn: 7,
        message: 'the tag `PS-101` is used twice',
        related: [{ label: 'first used here', file: 'list.csv', line: 2, column: 1, endLine: 2, endColumn: 7 }],
        note: 'the addresses differ',
        help: 'give one of them another tag',
      },
      {
        rule: 'not-text',
        severity: 'warning',
        file: 'photo.mdx',
        line: 1,
        column: 1,
        endLine: 1,
        endColumn: 1,
        message: 'the file is not text',
        related: [],
        note: null,
        help: null,
      },
    ],
    accepted: [],
  })
  const keys = [...report.matchAll(/^ {6}"(\w+)"/gm)].map(([, key]) => key)
  expect(keys.slice(0, 11)).toEqual(['rule', 'severity', 'file', 'line', 'column', 'endLine', 'endColumn', 'message', 'related', 'note', 'help'])
})

test('json names no machine where the folder is none', () => {
  expect(JSON.parse(reportJson([], undefined, counts))).toEqual({ machine: null, summary: { ...counts, coverage: [] }, findings: [], accepted: [] })
})

test('a rule is explained by its own texts', () => {
  const rule = { id: 'some-rule', severity: 'warning', summary: 'What.', why: 'Why.', source: 'house rule' } as const
  expect(explainRule(rule)).toBe(
    'some-rule (warning)\n\n  What.\n\nWhy it matters\n  Why.\n\nWhere it comes from\n  house rule\n\nWhat may be set\n  machine.yaml can raise or lower it, and accepted.yaml can accept what it finds.\n',
  )
})

describe('an accepted finding', () => {
  const at = (value: string) => ({ value, place: unread.place })
  const acceptance = {
    rule: at('not-text'),
    file: at('photo.mdx'),
    path: 'photo.mdx',
    isFile: true,
    folder: '',
    message: at('the file'),
    reason: 'the camera writes it so',
    until: at('2027-03-31'),
  }
  const accepted = [{ finding: unread, acceptance }]

  test('is told in one line with its reason, and counted', () => {
    expect(reportText([], texts, { errors: 0, warnings: 0, notes: 0 }, [], accepted)).toBe(
      'photo.mdx:1:1: warning: the file is not text [not-text]\n  accepted until 2027-03-31: the camera writes it so\n\n0 errors, 0 warnings, accepted 1\n',
    )
  })

  test('stands apart in json', () => {
    const { findings, accepted: told } = JSON.parse(reportJson([], 'tiny', counts, [], accepted))
    expect(findings).toEqual([])
    expect(told).toMatchObject([{ rule: 'not-text', file: 'photo.mdx', reason: 'the camera writes it so', until: '2027-03-31' }])
  })

  test('is a suppressed result in SARIF', () => {
    const { runs } = JSON.parse(reportSarif([duplicate], [], '1.2.3', accepted))
    expect(runs[0].results.map(({ suppressions }: { suppressions: object[] }) => suppressions)).toEqual([
      [],
      [{ kind: 'external', status: 'accepted', justification: 'the camera writes it so (until 2027-03-31)' }],
    ])
  })
})
