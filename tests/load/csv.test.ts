import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseCsv } from '../../src/load/csv.ts'
import { collect } from '../../src/load/load-rules.ts'
import type { Finding } from '../../src/source/finding.ts'
import { sourceText } from '../../src/source/source-text.ts'

function read(text: string) {
  const findings: Finding[] = []
  const source = sourceText('data.csv', text)
  const csv = parseCsv(source, collect(findings))
  return { source, csv, findings, cells: [csv.header, ...csv.records.map(({ cells }) => cells)].map((cells) => cells.map(({ value }) => value)) }
}

describe('parseCsv', () => {
  test.each([
    [
      'comma',
      'a,b\n1,2\n',
      ',',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'semicolon, with a comma inside a text',
      'a;b\n1;"2,5 m"\n',
      ';',
      [
        ['a', 'b'],
        ['1', '2,5 m'],
      ],
    ],
    [
      'tab',
      'a\tb\r\n1\t2\r\n',
      '\t',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'a sep= line that says other than the heading line looks',
      'sep=;\na,b;c\n1;2\n',
      ';',
      [
        ['a,b', 'c'],
        ['1', '2'],
      ],
    ],
    [
      'separators inside a quoted heading do not count',
      '"x;y;z",b\n1,2\n',
      ',',
      [
        ['x;y;z', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'quotes over lines',
      'a,b\n"one\ntwo",2\n',
      ',',
      [
        ['a', 'b'],
        ['one\ntwo', '2'],
      ],
    ],
    ['leading zeros and 1.10 stay text', 'number\n007\n1.10\n', ',', [['number'], ['007'], ['1.10']]],
    ['empty lines hold nothing', 'a\n\n1\n \n', ',', [['a'], ['1']]],
  ])('%s', (_, text, separator, cells) => {
    const result = read(text)
    expect(result.findings).toEqual([])
    expect(result.csv.separator).toBe(separator)
    expect(result.cells).toEqual(cells)
  })

  test('a quote that is never closed is reported where it opens', () => {
    const { findings } = read('a,b\n1,"two\n3,4\n')
    expect(findings.map(({ rule, place }) => [rule, place.line, place.column])).toEqual([['csv-syntax', 2, 3]])
  })

  test('text after a closing quote is reported', () => {
    const { findings } = read('a\n"12" inch\n')
    expect(findings.map(({ rule, place }) => [rule, place.line, place.column])).toEqual([['csv-syntax', 2, 5]])
  })

  const cell = fc.stringMatching(/^[ -~äñ\n]{0,8}$/)
  const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 })
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`

  test('cuts like csv-parse (RFC 4180)', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n'), (rows, separator, lineBreak) => {
        const text = `sep=${separator}\n${rows.map((row) => row.map(quoted).join(separator)).join(lineBreak)}`
        const body = text.slice(text.indexOf('\n') + 1)
        const expected = parse(body, { delimiter: separator, relax_column_count: true, record_delimiter: ['\n', '\r\n'] }).filter((row) =>
          row.some((value) => value.trim() !== ''),
        )
        const { csv } = read(text)
        const header = csv.header.map(({ value }) => value)
        expect([header, ...csv.records.map(({ cells }) => cells.map(({ value }) => value))]).toEqual(
          expected.length === 0 ? [[]] : [expected[0]?.map((value) => value.trim()), ...expected.slice(1)],
        )
      }),
    )
  })

  test('each place cuts its own cell out of the text', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const text = rows.map((row) => row.map(quoted).join(',')).join('\n')
        const { csv, source } = read(text)
        for (const { value, place } of csv.records.flatMap(({ cells }) => cells)) {
          expect(cut(source.text, place).replaceAll('""', '"')).toBe(value)
        }
      }),
    )
  })
})

/** The text at a place, found again from lines and columns alone. */
function cut(text: string, { line, column, endLine, endColumn }: { line: number; column: number; endLine: number; endColumn: number }): string {
  const lines = text.split('\n')
  const offset = (row: number, col: number) => lines.slice(0, row - 1).reduce((sum, it) => sum + it.length + 1, 0) + col - 1
  return text.slice(offset(line, column), offset(endLine, endColumn))
}
