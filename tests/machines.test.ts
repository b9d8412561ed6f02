import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { beforeAll, describe, expect, test } from 'vitest'
import { diskFolder, memoryFolder } from '../src/load/folder.ts'
import { loadMachine } from '../src/load/load-machine.ts'
import { type DrawingTexts, readDrawingTexts } from '../src/load/pdf/drawing-texts.ts'
import { graphOf } from '../src/model/graph.ts'
import { judgeLoaded } from './sound-machine.ts'

type Files = Map<string, string | Uint8Array>

const shared = diskFolder('content', 'content/')

function filesOf(name: string): Files {
  const folder = diskFolder(`tests/fixtures/machines/${name}`, '')
  return new Map(folder.list().map((path) => [path, folder.read(path)]))
}

/** Places, as they are printed, and rules of everything that is found. */
function check(files: Files, drawingTexts?: DrawingTexts): string[] {
  const { findings } = judgeLoaded(loadMachine(memoryFolder(files), shared, undefined, drawingTexts))
  return findings.map(({ place, rule }) => `${place.file}:${place.cell ?? place.line} ${rule}`)
}

/** A file with one text of ASCII in place of another, which stands in it once; its other bytes stay, whatever they are. */
function withText(files: Files, path: string, was: string, is: string): Files {
  const text = textOf(files, path)
  expect(text.split(was).length, `${path}: ${was}`).toBe(2)
  return new Map(files).set(path, Buffer.from(text.split(was).join(is), 'latin1'))
}

const textOf = (files: Files, path: string) => Buffer.from(files.get(path) ?? '').toString('latin1')

const lineOf = (files: Files, path: string, text: string) => (textOf(files, path).split(text)[0] ?? '').split('\n').length

const workbook = 'data/roll-slitter.xlsx'

/** The workbook with another number in a cell. `sheet` counts from 1. */
function withCell(files: Files, sheet: number, cell: string, value: number): Files {
  const before = files.get(workbook)
  if (!(before instanceof Uint8Array)) throw new Error('no workbook')
  const parts = unzipSync(before)
  const path = `xl/worksheets/sheet${sheet}.xml`
  const xml = strFromU8(parts[path] ?? new Uint8Array())
  const held = new RegExp(`(<c r="${cell}"[^>]*><v>)[^<]*`)
  expect(xml, cell).toMatch(held)
  parts[path] = strToU8(xml.replace(held, (_, start: string) => start + value))
  return new Map(files).set(workbook, zipSync(parts))
}

describe('the roll slitter: designations of IEC 81346, a workbook, drawings as PDF, variables as PLCopen XML', () => {
  const files = filesOf('roll-slitter')
  let drawingTexts: DrawingTexts
  beforeAll(async () => {
    drawingTexts = await readDrawingTexts(memoryFolder(files))
  })

  test('has no finding', () => expect(check(files, drawingTexts)).toEqual([]))

  test('has read everything that it is made of', () => {
    const [machine] = loadMachine(memoryFolder(files), shared, undefined, drawingTexts).machines
    const lists = [
      machine?.devices,
      machine?.signals,
      machine?.spares,
      machine?.cards,
      machine?.parts,
      machine?.alarms,
      machine?.symbols,
      machine?.energy,
    ]
    expect(lists.map((list) => list?.length)).toEqual([27, 20, 6, 4, 34, 6, 22, 2])
    expect(machine?.parts[0]?.number.value).toBe('0010021')
    expect(machine?.drawings.map(({ sheetList }) => sheetList.map(({ texts }) => texts.length > 20))).toEqual([[true, true], [true]])
  })

  test.each([
    ['pages/alarms/nip-roller.mdx', '<Tag id="=A1+V1-PG1" />', '<Tag id="=A1+S1-PG1" />', 'unknown-tag'],
    ['pages/alarms/web-break.mdx', '<Tag id="=A1+U1-BG3" />', '-BG4', 'unknown-tag-in-prose'],
    ['pages/components/knife-section.mdx', 'number="0050003"', 'number="50003"', 'unknown-part'],
    ['pages/components/knife-section.mdx', 'id="-X2:7"', 'id="-X2:77"', 'unknown-terminal'],
    ['pages/components/rewinder.mdx', 'sheet="1" tag="=A1+R1-MA1"', 'sheet="2" tag="=A1+R1-MA1"', 'tag-not-on-sheet'],
    ['pages/components/unwinder.mdx', 'sheet="2" tag="=A1+U1-BG3"', 'sheet="3" tag="=A1+U1-BG3"', 'sheet-out-of-range'],
  ])('another text in %s: %s as %s', (path, was, is, rule) => {
    const changed = withText(files, path, was, is)
    expect(check(changed, drawingTexts)).toEqual([`${path}:${lineOf(changed, path, is)} ${rule}`])
  })

  test('the variables of the controller take the place of the I/O list', () => {
    const yaml = textOf(files, 'machine.yaml')
    const [block = ''] = /^ {2}signals:\n(?: {4}.*\n)+/m.exec(yaml) ?? []
    // A variable says nothing of its terminal.
    const changed = withText(
      withText(files, 'machine.yaml', block, ''),
      'pages/components/knife-section.mdx',
      '<Terminal id="-X2:7" />',
      'a terminal',
    )
    expect(check(changed, drawingTexts)).toEqual([])
    const [machine] = loadMachine(memoryFolder(changed), shared, undefined, drawingTexts).machines
    const signals = machine?.signals.map(({ tag, type, address }) => [tag.value, type.value, address.value])
    expect(signals).toHaveLength(20)
    expect(signals).toContainEqual(['=A1+S1-QM1', 'DO', '%QX0.1'])
  })

  test('another address in the controller', () => {
    const changed = withText(files, 'data/controller.xml', 'name="I_NipUp" address="%IX1.0"', 'name="I_NipUp" address="%IX2.0"')
    expect(check(changed, drawingTexts)).toEqual([`${workbook}:IO!A10 symbol-address-differs`])
  })

  test.each([
    ['the part of a device', 1, 'I5', 10_035, 'Devices!I5 unknown-part'],
    ['the sheet of a device', 1, 'K5', 3, 'Devices!K5 sheet-out-of-range'],
    ['the number of sheets', 5, 'D2', 3, 'Drawings!D2 sheet-missing'],
    ['the part that replaces another', 4, 'I31', 50_009, 'Parts!I31 unknown-part'],
    ['the channel of a signal', 2, 'G4', 3, 'IO!G5 duplicate-channel'],
  ])('another value in the workbook: %s', (_, sheet, cell, value, found) => {
    expect(check(withCell(files, sheet, cell, value), drawingTexts)).toEqual([`${workbook}:${found}`])
  })
})

describe('the tray dispenser: tags of its builder, Spanish, CSV with semicolons and decimal commas, drawings as SVG', () => {
  const files = filesOf('tray-dispenser')

  test('has no finding', () => expect(check(files)).toEqual([]))

  test('has read everything that it is made of', () => {
    const [machine] = loadMachine(memoryFolder(files), shared).machines
    const lists = [machine?.devices, machine?.signals, machine?.spares, machine?.cards, machine?.parts, machine?.alarms, machine?.energy]
    expect(lists.map((list) => list?.length)).toEqual([17, 10, 2, 2, 19, 4, 2])
    expect(machine?.alarms[1]?.text.es?.value).toBe('Almacén vacío')
    expect(machine?.parts.find(({ number }) => number.value === '400.010')?.quantity.value).toBe(2.4)
  })

  test.each([
    ['pages/alarms/al03.mdx', '<Tag id="10YV01" />', '<Tag id="10YV11" />', 'unknown-tag'],
    ['pages/components/almacen.mdx', 'sheet="2" tag="10YV01"', 'sheet="1" tag="10YV01"', 'tag-not-on-sheet'],
    ['pages/components/almacen.mdx', 'sheet="2" tag="10YV01"', 'sheet="3" tag="10YV01"', 'sheet-out-of-range'],
    ['pages/components/cinta.mdx', 'El motor <Tag id="20M01" />', 'El motor <Tag id="20U01" />', 'wrong-kind'],
    ['data/aparatos.csv', '300.020', '300.021', 'unknown-part'],
    ['data/aparatos.csv', '00G01;', '00G1;', 'tag-grammar'],
    ['data/alarmas.csv', '10B03 10YV01', '10B03 10YV10', 'unknown-tag'],
    ['data/entradas-salidas.csv', 'E0.5;SeparadorAdelante', 'E0.4;SeparadorAdelante', 'duplicate-address'],
    ['data/entradas-salidas.csv', 'X1:6;0006', 'X1:6;0016', 'signal-not-on-sheet'],
    ['data/materiales.csv', '2,4;m;', '2.4;m;', 'wrong-type'],
  ])('another text in %s: %s as %s', (path, was, is, rule) => {
    const changed = withText(files, path, was, is)
    expect(check(changed)).toEqual([`${path}:${lineOf(changed, path, is)} ${rule}`])
  })

  test('another tag on a drawing', () => {
    const path = 'drawings/E-010.1.svg'
    const changed = withText(files, path, '>20M01<', '>20M02<')
    const inList = `data/aparatos.csv:${lineOf(files, 'data/aparatos.csv', '20M01')} tag-not-on-sheet`
    expect(check(changed)).toEqual([inList, `${path}:${lineOf(changed, path, '>20M02<')} unknown-tag-on-drawing`])
  })
})

describe('the dosing skid: loop tags of ANSI/ISA-5.1, balloons on a piping drawing, sheets written as references', () => {
  const files = filesOf('dosing-skid')

  test('has no finding', () => expect(check(files)).toEqual([]))

  test('shows each tag of a balloon on its sheet', () => {
    const [machine] = loadMachine(memoryFolder(files), shared).machines
    if (!machine) throw new Error('no machine')
    const sightings = graphOf(machine).sightingsOn(machine.drawings[0]?.sheetList[0] ?? expect.fail('no sheet'))
    expect(sightings.map(({ tag }) => tag).sort()).toEqual(machine.devices.map(({ tag }) => tag.value).sort())
  })

  test.each([
    ['pages/components/pump.mdx', '<Tag id="GT-1206" />', '<Tag id="GT-1207" />', 'unknown-tag'],
    ['pages/components/tank.mdx', '<Tag id="TT-1203" />', 'TT-1204', 'unknown-tag-in-prose'],
    ['pages/front/use.mdx', 'sheet="/1.3"', 'sheet="/1.5"', 'unknown-zone'],
    ['data/devices.csv', '/1.4:C', '/1.4:D', 'unknown-zone'],
    ['data/devices.csv', '/1.2:B', '/2.2:B', 'sheet-out-of-range'],
    ['data/devices.csv', '/1.2:B', '1.2', 'wrong-type'],
  ])('another text in %s: %s as %s', (path, was, is, rule) => {
    const changed = withText(files, path, was, is)
    expect(check(changed)).toEqual([`${path}:${lineOf(changed, path, is)} ${rule}`])
  })

  test('a letter that the legend does not explain, and one that stands in the wrong place', () => {
    const path = 'data/devices.csv'
    const line = (tag: string) => lineOf(files, path, tag)
    expect(check(withText(files, 'machine.yaml', '    first: { G: { en: gap, es: holgura } }\n', ''))).toEqual([
      `${path}:${line('GT-1206')} tag-grammar`,
    ])
    const everywhere = new Map(
      [...files].map(([name]) => [name, textOf(files, name).split('TT-1203').join('TH-1203')] as const).filter(([name]) => /mdx|csv/.test(name)),
    )
    expect(check(new Map([...files, ...everywhere]))).toContain(`${path}:${line('TT-1203')} tag-grammar`)
  })

  test('other letters in a balloon', () => {
    const path = 'drawings/P-12.svg'
    const changed = withText(files, path, '>TT<', '>TI<')
    expect(check(changed)).toEqual([
      `data/devices.csv:${lineOf(files, 'data/devices.csv', 'TT-1203')} tag-not-on-sheet`,
      `${path}:${lineOf(changed, path, '>TI<')} unknown-tag-on-drawing`,
    ])
  })
})
