import { describe, expect, test } from 'vitest'
import { collect } from '../../src/load/load-rules.ts'
import { parseSheet } from '../../src/load/svg.ts'
import type { Finding } from '../../src/source/finding.ts'
import { sourceText } from '../../src/source/source-text.ts'

function read(body: string, open = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 200">') {
  const findings: Finding[] = []
  const sheet = parseSheet(sourceText('drawings/E-1.svg', `${open}${body}</svg>`), 1, collect(findings))
  return { sheet, findings: findings.map(({ rule }) => rule) }
}

describe('parseSheet', () => {
  test.each([
    ['plain', '<text x="10" y="20" font-size="10">B1</text>', [['B1', 16, 16.5, 0]]],
    ['anchored in the middle', '<text x="10" y="20" font-size="10" text-anchor="middle">B1</text>', [['B1', 10, 16.5, 0]]],
    ['moved and scaled', '<g transform="translate(100 50) scale(2)"><text x="10" y="20" font-size="10">B1</text></g>', [['B1', 132, 83, 0]]],
    ['turned by 90 degrees', '<text transform="rotate(90)" x="10" y="0" font-size="10">B1</text>', [['B1', 3.5, 16, 90]]],
    ['parts of a text without a place of their own', '<text x="0" y="0" font-size="10">B<tspan>1</tspan>2</text>', [['B12', 9, -3.5, 0]]],
    [
      'parts of a text with a place of their own',
      '<text font-size="10"><tspan x="0" y="10">B1</tspan><tspan x="0" y="30">B2</tspan></text>',
      [
        ['B1', 6, 6.5, 0],
        ['B2', 6, 26.5, 0],
      ],
    ],
    [
      'pieces of a word set one after the other',
      '<text font-size="10"><tspan x="0" y="10">MT</tspan><tspan x="14" y="10">R</tspan><tspan x="21" y="10">5</tspan><tspan x="60" y="10">A</tspan></text>',
      [
        ['MTR5', 12, 6.5, 0],
        ['A', 63, 6.5, 0],
      ],
    ],
    ['letters set apart', '<text x="0" y="10" font-size="10">B 1 2</text>', [['B12', 9, 6.5, 0]]],
    ['definitions are not on the sheet', '<defs><text x="0" y="0">B1</text></defs>', []],
  ])('finds a text: %s', (_, body, expected) => {
    const { sheet, findings } = read(body)
    expect(findings).toEqual([])
    expect(sheet.texts.map(({ text, x, y, angleDeg }) => [text, round(x), round(y), round(angleDeg)])).toEqual(expected)
  })

  test.each([
    ['a script', '<script>alert(1)</script>'],
    ['an event handler', '<rect onclick="alert(1)" width="1" height="1"/>'],
    ['an outside picture', '<image href="http://example.com/a.png"/>'],
    ['an outside link', '<a xlink:href="https://example.com"><rect/></a>'],
    ['foreign content', '<foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><b>x</b></body></foreignObject>'],
    ['an outside style', '<style>@import url(http://example.com/a.css)</style>'],
  ])('leaves out %s', (_, body) => {
    const { sheet } = read(body)
    expect(sheet.svg()).not.toMatch(/script|alert|example\.com|foreignObject|@import/)
    expect(sheet.svg()).toContain('viewBox')
  })

  test('a text stands where it is written, in lines of any kind', () => {
    for (const end of ['\n', '\r\n']) {
      const { sheet } = read(`${end}<text x="1" y="1">${end}  <tspan>PS</tspan>&amp;1 </text>`)
      expect(sheet.texts[0]?.place).toMatchObject({ line: 3, column: 3, endLine: 3, endColumn: 26 })
    }
  })

  test('a sheet that is not XML, or has no viewBox, is a finding', () => {
    expect(read('<g>').findings).toEqual(['broken-drawing'])
    expect(read('', '<svg xmlns="http://www.w3.org/2000/svg">').findings).toEqual(['broken-drawing'])
  })
})

const round = (value: number) => Math.round(value * 100) / 100
