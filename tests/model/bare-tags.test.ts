import { describe, expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Machine } from '../../src/model/machine.ts'
import { tagReader } from '../../src/model/prose/tag-reader.ts'
import { loadSound } from '../sound-machine.ts'
import { seededSlips } from './seeded-slips.ts'

const machines = loadMachine(diskFolder('example-machine', ''), diskFolder('content', 'content/')).machines

/** A machine whose device list holds these tags. */
function machineWith(designation: string, tags: readonly string[]): Machine {
  const yaml = [
    'id: tiny',
    'model: P 10',
    'name: Press',
    'builder: Nobody',
    'document: D-1',
    'revision: A',
    "date: '2026-01-01'",
    `designation: ${designation}`,
    'languages: { source: en }',
    "units: [{ serial: '001', fitted: [] }]",
    'data: { devices: { file: data/devices.csv } }',
  ]
  const rows = tags.map((tag) => `${tag},switch,Switch`)
  const changes = new Map([
    ['machine.yaml', `${yaml.join('\n')}\n`],
    ['data/devices.csv', `${['tag,kind,description', ...rows].join('\n')}\n`],
  ])
  const [machine] = loadSound(changes).machines
  if (!machine) throw new Error('the machine of the test is broken')
  return machine
}

/** What is found in a text: `unknown PRS205`. */
const found = (machine: Machine, text: string) => tagReader(machine)(text).map(({ is, written }) => `${is} ${written}`)

// Words of the trade, from memory: none of them names a device, whatever letters the machine uses.
const tradeWords = `M3 M4 M5 M6 M8 M10 M12 M16 M20 M12x1 M8x1 M30x1.5 G1/4 G1/2 G3/8 G1 R1/2 Rc1/4 Tr20x4 NPT1/4 DN15 DN25 DN50 DN100
  PN6 PN10 PN16 PN40 H7 h6 g6 F7 k6 H7/g6 IT7 Ra1.6 IP20 IP54 IP65 IP67 IP68 IP69K IK08 NEMA4 NEMA4X NEMA12 SIL2 SIL3 PLd PLe CAT3 CAT5 CAT5e Cat6
  FFP2 FFP3 Pt50 Pt100 PT100 Pt500 Pt1000 Ni100 Cu10 NTC10 PTC130 RS232 RS422 RS485 RS-485 EIA485 RJ11 RJ45 USB2 USB3 AWG14 CR2032 LR6 LR44 GU10 E10 E14 E27
  BA9s S235 S235JR S355 S355J2 AISI304 St37 St52 Fe360 C45 C45E PA6 PA66 PA12 HRC58 NBR70 FKM75 EPDM70 VG32 VG46 VG220 ISO-VG46 HLP46 CLP220 NLGI2
  UN1824 UN1950 CO2 H2O SF6 R134a R410A R744 ISO7010 ISO13849 EN60204 IEC61131 DIN471 ANSI70 NFPA79 UL508A ASTM53 RAL7035 T5 T10 AT5 AT10 HTD5 SPA1000 XPZ900
  A4 A3 F1 F5 F12 L1 L2 L3 U1 V1 W1 U2 X1 X2:14 K1 Q4 N1 0V 24V 24VDC 24V-DC 230VAC 400V 4-20mA 10A 16A 3kW 5kN 10kHz 50Hz 10bar 6mm2 1.5mm2 0.3m 20min
  10min 5L 25x10 3x1.5 4G1.5 IPv4 UTF8 H264 NaOH PNP NPN STO SS1 T1 2D 3D 2-wire 3-wire 4-way 5/2-way 1st 2nd 3rd 12-pin 8-pole`
  .split(/\s+/)
  .filter((word) => word !== '')

describe('words of the trade', () => {
  test('are no tags on any of three machines', () => {
    expect(new Set(tradeWords).size).toBeGreaterThanOrEqual(150)
    const letters = machineWith('nfpa79', ['M1', 'M14', 'S1', 'PT101', 'PN101', 'SS101', 'CR1203', 'EN104', 'RS101', 'CAT101', 'IP101', 'T101'])
    for (const machine of [...machines, loadMachineOfPress(), letters])
      for (const word of tradeWords) expect([word, ...found(machine, `Look at the ${word} here, ${word}.`)]).toEqual([word])
  })
})

function loadMachineOfPress(): Machine {
  const [machine] = loadSound(new Map()).machines
  if (!machine) throw new Error('the sound machine is broken')
  return machine
}

describe('a machine with designations of IEC 81346', () => {
  const machine = machineWith('iec81346', ['=W1+C2-A1.B104', '=W1+C2-Q12', '-M3', '+C4-K7', '-B20'])
  test.each([
    ['Look at =W1+C2-A1.B104, then at -A1.B104.', ['known =W1+C2-A1.B104', 'known -A1.B104']],
    ['The same with the sign again: -A1-B104.', ['known -A1-B104']],
    ['The place +C2, the function =W1 and the assembly -A1.', ['known +C2', 'known =W1', 'known -A1']],
    ['Terminal -Q12:14 and motor -M3:U1.', ['known -Q12', 'known -M3']],
    ['No such switch: -Q13, and no such place: +C9.', ['unknown -Q13', 'unknown +C9']],
    ['One digit too many: -B2O, -B200.', ['look-alike -B2O', 'unknown -B200']],
    ['A dash for the sign: \u2013Q12 and \u2212Q12.', ['look-alike \u2013Q12', 'look-alike \u2212Q12']],
    ['Without its sign a product is no tag: Q12, Q13, B20, M12, A4, H7.', []],
    ['But B2O looks like one.', ['look-alike B2O']],
    ['Signs before numbers: -20 °C, +24 V, +24V, -10V, = 5, -5 to +5, 4-20 mA, A-4, T-B20.', []],
  ])('%s', (text, expected) => expect(found(machine, text)).toEqual(expected))
})

describe('a machine with a pattern of its builder', () => {
  const machine = machineWith("{ pattern: '\\d{2}[A-Z]{2,3}\\d{3}|[A-Z]+/\\d+\\.\\d' }", ['10LAC001', '10LAC002', '20BG104', 'VALVE/12.1'])
  test.each([
    ['Start 10LAC001 and 20BG104, then VALVE/12.1.', ['known 10LAC001', 'known 20BG104', 'known VALVE/12.1']],
    ['No such pump: 10LAC003; no such valve: VALVE/13.1.', ['unknown 10LAC003', 'unknown VALVE/13.1']],
    ['20BG1O4 and 10\u2013LAC001.', ['look-alike 20BG1O4', 'respelled 10\u2013LAC001']],
    ['10ABC123 has the form, and letters that no device has. 24VDC, M12, IP67.', []],
  ])('%s', (text, expected) => expect(found(machine, text)).toEqual(expected))
})

describe('a machine with letters and numbers', () => {
  const machine = machineWith('nfpa79', ['PS-101', 'PS-102', 'LS206', '12LS', '1203LS-A', 'PB7', 'M12', 'PT100'])
  test.each([
    ['PS-101, (PS-102) and "LS206": 12LS, 1203LS-A; PB7.', ['PS-101', 'PS-102', 'LS206', '12LS', '1203LS-A', 'PB7'].map((tag) => `known ${tag}`)],
    [
      'PS-101/PS-102, PS-101–PS-102, PS-101-side, PS-101-102, LS206:13.',
      ['PS-101', 'PS-102', 'PS-101', 'PS-102', 'PS-101', 'PS-101', 'LS206'].map((tag) => `known ${tag}`),
    ],
    ['PS-103, LS207, 13LS, PB8.', ['unknown PS-103', 'unknown LS207', 'unknown 13LS', 'unknown PB8']],
    ['PS101, ps-101, PS 101, LS-206, LS 206, PB07.', ['PS101', 'ps-101', 'PS 101', 'LS-206', 'LS 206', 'PB07'].map((tag) => `respelled ${tag}`)],
    [
      'PS\u2013101, PS-1O1, LS2O6, L5206, PS\u00A0101, \u0420S-101.',
      ['look-alike PS\u2013101', 'look-alike PS-1O1', 'look-alike LS2O6', 'unknown L5206', 'respelled PS\u00A0101', 'look-alike \u0420S-101'],
    ],
    ['Motor M12 with a thread M16; Pt100 at PT100.', ['known M12', 'known PT100']],
    ['The file LS207.svg, the variable I_LS207, the address %LS207, a@LS207.', []],
  ])('%s', (text, expected) => expect(found(machine, text)).toEqual(expected))
})

describe('the example machine', () => {
  const [machine] = machines
  if (!machine) throw new Error('the example machine is broken')
  const tags = machine.devices.map(({ tag }) => tag.value)

  test('every tag of it is read in prose', () => {
    for (const tag of tags) expect(found(machine, `Look at ${tag}, then at (${tag}).`)).toEqual([`known ${tag}`, `known ${tag}`])
  })

  test('slips in its tags are found', () => {
    const slips = seededSlips(tags, 500)
    const real = new Set(tags)
    const missed = slips.filter(({ is }) => !real.has(is) && found(machine, `Look at ${is} first.`).join() === '')
    const another = slips.filter(({ is }) => real.has(is)).length
    const share = (slips.length - another - missed.length) / (slips.length - another)
    // biome-ignore lint/suspicious/noConsole: the share is read by people
    console.info(`${slips.length} slips in tags: ${another} are another real tag; of the others ${(share * 100).toFixed(1)} % are found`)
    expect(share).toBeGreaterThan(0.95)
    // No tag that is written wrong is ever taken for a tag that is there.
    for (const { is } of slips.filter((slip) => !real.has(slip.is)))
      for (const { written, is: kind } of tagReader(machine)(`Look at ${is} first.`)) if (kind === 'known') expect(real.has(written)).toBe(true)
  })
})
