import { describe, expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Machine } from '../../src/model/machine.ts'
import { tagReader } from '../../src/model/prose/tag-reader.ts'
import { loadSound } from '../sound-machine.ts'
import { seededSlips } from './seeded-slips.ts'
import { tradeWords } from './trade-words.ts'

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
