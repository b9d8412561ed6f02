import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

let dir: string
let shared: string
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-new-'))
  shared = join(dir, 'content')
  mkdirSync(shared)
})
afterAll(() => rmSync(dir, { recursive: true, force: true }))

function write(name: string, content: string | Uint8Array): string {
  const path = join(dir, name)
  writeFileSync(path, content)
  return path
}

const coverage = async (folder: string) => {
  const ran = await runFettle(['check', folder, '--shared', shared, '--format', 'json'])
  const { summary } = JSON.parse(ran.stdout)
  return { code: ran.code, errors: summary.errors, pages: summary.coverage.find(({ what }: { what: string }) => what === 'pages written') }
}

describe('fettle new', () => {
  test('German exports with semicolons: columns are guessed and told, stubs wait, the check has no error', async () => {
    const io = write(
      'io.csv',
      Buffer.from('BMK;Signalart;Adresse;Kommentar;Karte\nPS101;DI;E0.0;Druck genügt;K1\nSOL201;DO;A0.0;Spannt;K2\n;DI;E0.1;Reserve;K1\n', 'latin1'),
    )
    const alarms = write('alarme.csv', 'Nummer;Meldetext;Reaktion;BMK\n017;Druck fehlt;stop;PS101\n')
    const folder = join(dir, 'presse')
    const ran = await runFettle(['new', folder, '--io', io, '--alarms', alarms, '--language', 'de'])
    expect(ran).toMatchObject({ code: 0, stderr: '' })
    expect(ran.stdout).toContain('address: `Adresse` (by its heading)')
    expect(ran.stdout).toContain('not read: `Karte`')
    expect(readFileSync(join(folder, 'data/io-list.csv')).equals(readFileSync(io))).toBe(true)
    expect(existsSync(join(folder, 'pages/components/ps101.mdx'))).toBe(true)
    expect(readFileSync(join(folder, 'pages/alarms/017.mdx'), 'utf8')).toContain('alarm: "017"')
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0, pages: { have: 0, of: 3 } })
    const page = join(folder, 'pages/components/ps101.mdx')
    writeFileSync(page, readFileSync(page, 'utf8').replace('draft: true\n', '').replace('Noch nicht geschrieben.', 'Meldet, dass der Druck genügt.'))
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0, pages: { have: 1, of: 3 } })
  })

  test('English with tabs, designations of IEC 81346', async () => {
    const io = write('io.txt', 'Tag\tI/O\tPLC Address\tDescription\n=A1-BG1\tDI\t%IX0.0\tGate shut\n=A1-MA2\tDO\t%QX0.1\tBelt runs\n')
    const folder = join(dir, 'belt')
    expect(await runFettle(['new', folder, '--io', io])).toMatchObject({ code: 0 })
    expect(readFileSync(join(folder, 'machine.yaml'), 'utf8')).toContain('designation: iec81346')
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0 })
  })

  test('loop tags of ANSI/ISA-5.1: kinds follow from the letters, and a motor stands in the legend', async () => {
    const rows = [
      'PDSHH-1204A,DI,%IX0.0,Filter',
      'TT-101,AI,%IW2,Tank',
      'FQI-220B,CNT,%IW4,Dosed',
      'LSL-102,DI,%IX0.1,Tank empty',
      'M-201,DO,%QX0.0,Pump',
    ]
    const io = write('loops.csv', `Tag,Type,Address,Description\n${rows.join('\n')}\n`)
    const folder = join(dir, 'skid')
    expect(await runFettle(['new', folder, '--io', io])).toMatchObject({ code: 0 })
    expect(readFileSync(join(folder, 'machine.yaml'), 'utf8')).toMatch(/^designation:\n {2}isa51:\n {4}equipment:\n {6}M: to be named\n/m)
    const list = readFileSync(join(folder, 'data/devices.csv'), 'utf8').split('\n').slice(1, 6)
    expect(list).toEqual([
      'PDSHH-1204A,differential pressure switch,Filter',
      'TT-101,temperature transmitter,Tank',
      'FQI-220B,flow indicator,Dosed',
      'LSL-102,level switch,Tank empty',
      'M-201,to be named,Pump',
    ])
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0 })
  })

  test('Spanish with a sep= line; a table without a needed column is left out and told', async () => {
    const bom = write('bom.csv', 'sep=;\r\nReferencia;Descripción;Cantidad\r\n0012;"Sensor; inductivo";2\r\n')
    const io = write('es.csv', 'Marca,Dirección\nLS1,%IX0.0\n')
    const folder = join(dir, 'maquina')
    const ran = await runFettle(['new', folder, '--bom', bom, '--io', io, '--language', 'es'])
    expect(ran.stdout).toContain('no column for type')
    expect(readFileSync(join(folder, 'machine.yaml'), 'utf8')).toContain('# signals: data/io-list.csv has no column for type')
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0 })
  })

  test('a device list that lacks a column is kept, and the devices of the I/O list stand in for it', async () => {
    const io = write('io-es.csv', 'sep=,\n"Columna 1",Columna 2,Tipo de señal,Función\nPS101,%IX0.0,DI,"Presión, entrada"\n')
    const devices = write('aparatos.csv', 'Aparato,Situación\nPS101,detrás\n')
    const folder = join(dir, 'prensa')
    const ran = await runFettle(['new', folder, '--io', io, '--devices', devices, '--language', 'es'])
    expect(ran.stdout).toContain('tag: `Columna 1` (by its values)')
    expect(readFileSync(join(folder, 'data/devices.csv')).equals(readFileSync(devices))).toBe(true)
    expect(readFileSync(join(folder, 'data/devices-from-io.csv'), 'utf8')).toMatch(/^PS101,.*,"Presión, entrada"$/m)
    expect(await coverage(folder)).toMatchObject({ code: 0, errors: 0 })
  })

  test('a folder with something in it, no export, and a file that is not there are refused, and nothing is written', async () => {
    const io = write('one.csv', 'Tag,Type,Address\nLS1,DI,%IX0.0\n')
    expect(await runFettle(['new', dir, '--io', io])).toMatchObject({ code: 2, stderr: expect.stringContaining('not empty') })
    const folder = join(dir, 'none')
    expect(await runFettle(['new', folder])).toMatchObject({ code: 2, stderr: expect.stringContaining('name at least one export') })
    expect(await runFettle(['new', folder, '--io', join(dir, 'no.csv')])).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('there is no file'),
    })
    expect(existsSync(folder)).toBe(false)
  })
})
