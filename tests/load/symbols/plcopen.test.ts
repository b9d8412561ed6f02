import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { collect } from '../../../src/load/load-rules.ts'
import { parsePlcopen } from '../../../src/load/symbols/plcopen.ts'
import type { Finding } from '../../../src/source/finding.ts'
import type { Place } from '../../../src/source/place.ts'
import { sourceText } from '../../../src/source/source-text.ts'
import { loadSound } from '../../sound-machine.ts'

function read(text: string) {
  const findings: Finding[] = []
  const source = sourceText('controller.xml', text)
  const rows = parsePlcopen(source, collect(findings))
  return { source, findings, rows: (rows?.records ?? []).map(({ cells }) => cells) }
}

/** The text between two places of one line. */
function cut(text: string, { line, column, endColumn }: Place): string {
  return (text.split('\n')[line - 1] ?? '').slice(column - 1, endColumn - 1)
}

// The shape of TC6 XML 2.01, from memory: documentation holds XHTML.
const version2 = `<?xml version="1.0" encoding="utf-8"?>
<project xmlns="http://www.plcopen.org/xml/tc6_0201" xmlns:h="http://www.w3.org/1999/xhtml">
  <instances><configurations><configuration name="Press">
    <resource name="Controller"><globalVars name="Inputs">
      <variable address="%IX0.0" name="Clamp">
        <type><BOOL /></type>
        <documentation><h:xhtml>PS-101 <h:b>clamp</h:b> pressure
          low</h:xhtml></documentation>
      </variable>
    </globalVars></resource>
    <globalVars><variable name='Speed &gt; 0' address = '%IW4'><type><INT /></type></variable></globalVars>
    <globalVars><variable name="Valve"><type><derived name="T_Valve" /></type></variable></globalVars>
  </configuration></configurations></instances>
</project>`

// The shape of IEC 61131-10, from memory: elements in upper case, the address as an element.
const iec = `<Project><Instances><Configuration name="Press"><Resource name="C">
<GlobalVars><Variable name="Clamp"><Type><TypeName>BOOL</TypeName></Type><Address address="%IX0.0" /></Variable></GlobalVars>
</Resource></Configuration></Instances></Project>`

describe('parsePlcopen', () => {
  test('reads name, address, type and comment wherever variables are global', () => {
    const { rows, findings } = read(version2)
    expect(findings).toEqual([])
    expect(rows.map((cells) => cells.map(({ value }) => value))).toEqual([
      ['Clamp', '%IX0.0', 'BOOL', 'PS-101 clamp pressure low'],
      ['Speed > 0', '%IW4', 'INT', ''],
      ['Valve', '', 'T_Valve', ''],
    ])
  })

  test('reads the elements of IEC 61131-10', () => {
    const { rows } = read(iec)
    expect(rows.map((cells) => cells.map(({ value }) => value))).toEqual([['Clamp', '%IX0.0', 'BOOL', '']])
    expect(cut(iec, rows[0]?.[1]?.place ?? { file: '', line: 1, column: 1, endLine: 1, endColumn: 1 })).toBe('%IX0.0')
  })

  test('the place of a name and an address is the text between its quotes', () => {
    const word = fc.stringMatching(/^[A-Za-z][A-Za-z0-9_.%]{0,9}$/)
    const space = fc.constantFrom(' ', '  ', '\n   ', '\t')
    const quote = fc.constantFrom('"', "'")
    const variable = fc.record({
      name: word,
      address: word,
      before: space,
      around: fc.constantFrom('', ' '),
      quote,
      first: fc.boolean(),
      other: fc.boolean(),
    })
    fc.assert(
      fc.property(fc.array(variable, { minLength: 1, maxLength: 6 }), (variables) => {
        const text = `<project><globalVars>${variables
          .map(({ name, address, before, around, quote, first, other }) => {
            const [a, b] = [`name${around}=${around}${quote}${name}${quote}`, `address${around}=${around}${quote}${address}${quote}`]
            const attributes = [...(first ? [a, b] : [b, a]), ...(other ? [`note=${quote}name= > address${quote}`] : [])]
            return `<variable${attributes.map((it) => before + it).join('')}/>`
          })
          .join('\n')}</globalVars></project>`
        const { rows } = read(text)
        expect(rows.map(([name, address]) => [name, address].map((cell) => cell && cut(text, cell.place)))).toEqual(
          variables.map(({ name, address }) => [name, address]),
        )
      }),
    )
  })

  test('a list of 20,000 variables takes no more than a few seconds', () => {
    const variables = Array.from(
      { length: 20_000 },
      (_, n) => `<variable name="V${n}" address="%IX${n >> 3}.${n & 7}"><type><BOOL /></type></variable>`,
    )
    const start = performance.now()
    expect(read(`<project><globalVars>${variables.join('\n')}</globalVars></project>`).rows).toHaveLength(20_000)
    expect(performance.now() - start).toBeLessThan(10_000)
  })
})

describe('a machine without an I/O list', () => {
  const yaml = (tag = '') => `id: tiny
model: P 10
name: Crate press
builder: Nobody
document: D-1
revision: A
date: '2026-01-01'
designation: nfpa79
languages: { source: en }
units: [{ serial: '001', fitted: [] }]
data:
  devices: { file: data/devices.csv }
  symbols: { file: data/symbols.txt${tag} }
`
  const signals = (symbols: string, tag?: string) =>
    loadSound(
      new Map([
        ['machine.yaml', yaml(tag)],
        ['data/symbols.txt', `name;address;type;comment\n${symbols}`],
      ]),
    ).machines[0]?.signals.map(({ tag, type, address, symbol }) => [tag.value, type.value, address.value, symbol?.value])

  test('has the signals of its variables, their types from the addresses', () => {
    expect(
      signals('A;%IX0.0;BOOL;PS-101\nB;%QX0.0;BOOL;PS101 lamp\nC;%IW4;INT;level PS 102\nD;%QD8;REAL;PS-102\nE;%MW2;INT;PS-102\nF;;BOOL;PS-102'),
    ).toEqual([
      ['PS-101', 'DI', '%IX0.0', 'A'],
      ['PS-101', 'DO', '%QX0.0', 'B'],
      ['PS-102', 'AI', '%IW4', 'C'],
      ['PS-102', 'AO', '%QD8', 'D'],
    ])
  })

  test('takes the tag that the pattern captures, from the name before the comment', () => {
    expect(signals('I_PS-101_Low;%IX0.0;BOOL;PS-102', ", tag: '(?<tag>PS-\\d+)'")).toEqual([['PS-101', 'DI', '%IX0.0', 'I_PS-101_Low']])
  })

  test.each([
    ["tag: 'PS-(\\d+'", 'is no regular expression'],
    ["tag: 'PS-\\d+'", 'does not say which part is the tag'],
    ["tag: '(?<tag>PS-(\\d+)'", 'is no regular expression'],
  ])('a pattern that is wrong is reported: %s', (tag, message) => {
    const { findings } = loadSound(
      new Map([
        ['machine.yaml', yaml(`, ${tag}`)],
        ['data/symbols.txt', 'name;address;type;comment\nA;%IX0.0;BOOL;\n'],
      ]),
    )
    expect(findings.map((it) => [it.rule, it.message])).toContainEqual(['wrong-type', `\`data.symbols.tag\` ${message}`])
    expect(findings.filter(({ rule }) => rule === 'variable-without-tag')).toEqual([])
  })
})
