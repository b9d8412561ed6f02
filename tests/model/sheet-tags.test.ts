import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { graphOf } from '../../src/model/graph.ts'
import { loadSound } from '../sound-machine.ts'

const machineFile = readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8')

/** What is found on a sheet with these texts: each with the devices that it means, `written: tags`. */
function mentions(texts: readonly string[], tags: readonly string[], designation = 'iec81346'): string[] {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">${texts.map((text, n) => `<text x="1" y="${n * 20}" font-size="10">${text}</text>`).join('')}</svg>`
  const [machine] = loadSound(
    new Map([
      ['machine.yaml', machineFile.replace('nfpa79', designation)],
      ['data/devices.csv', `tag,kind,description\n${tags.map((tag) => `${tag},switch,Clamp\n`).join('')}`],
      ['drawings/L-1.svg', svg],
    ]),
  ).machines
  const sheet = machine?.drawings.find(({ number }) => number.value === 'L-1')?.sheetList[0]
  if (!machine || !sheet) throw new Error('no sheet L-1')
  return graphOf(machine)
    .mentionsOn(sheet)
    .flatMap(({ is, written, tags: meant, text }) =>
      is === 'known' && meant.length > 0 ? [`${written}: ${meant.join(' ')} at ${Math.round(text.x)}`] : [],
    )
}

const two = ['=A1+B1-BG3', '=A1+B2-BG3']

describe('a short designation on a sheet', () => {
  test.each([
    ['whole', ['=A1+B1-BG3'], ['=A1+B1-BG3: =A1+B1-BG3 at 31']],
    ['with the function and the location in one text', ['=A1+B2', '-BG3'], ['-BG3: =A1+B2-BG3 at 13']],
    ['with the function and the location apart', ['=A1', '+B1', '-BG3'], ['-BG3: =A1+B1-BG3 at 13']],
    ['with its terminal', ['=A1', '+B1', '-BG3:2'], ['-BG3: =A1+B1-BG3 at 13']],
    ['with a location of which it is not', ['=A1+B9', '-BG3'], []],
    ['with no location', ['-BG3'], []],
    ['with both locations', ['=A1', '+B1', '+B2', '-BG3'], ['-BG3: =A1+B1-BG3 =A1+B2-BG3 at 13']],
  ])('%s', (_, texts, expected) => expect(mentions(texts, two)).toEqual(expected))

  test('that only one device has needs no location', () => expect(mentions(['-BG4'], [...two, '=A1+B2-BG4'])).toEqual(['-BG4: =A1+B2-BG4 at 13']))
})

describe('a tag on a sheet', () => {
  test.each([
    ['alone', ['PS-101'], ['PS-101: PS-101 at 19']],
    ['with another dash', ['PS–101'], ['PS-101: PS-101 at 19']],
    ['beside numbers of contacts', ['13 PS-101 14'], ['PS-101: PS-101 at 37']],
    ['in the sentence of a note', ['see PS-101'], []],
    ['of another device', ['PS-1011'], []],
  ])('%s', (_, texts, expected) => expect(mentions(texts, ['PS-101'], 'nfpa79')).toEqual(expected))
})

test('a device that is not fitted to the unit is no device on its sheets', () => {
  const [withFan, without] = loadSound().machines.map((machine) => {
    const graph = graphOf(machine)
    return machine.drawings.flatMap(({ sheetList }) => sheetList.flatMap((sheet) => graph.sightingsOn(sheet).map(({ tag }) => tag)))
  })
  expect(withFan).toEqual(['PS-101', 'DISC1', 'PS-102', 'MTR5'])
  expect(without).toEqual(['PS-101', 'DISC1', 'PS-102'])
})

describe('the balloon of an instrument', () => {
  const balloon = (x: number, y: number, letters: string, number: string) =>
    `<text x="${x}" y="${y}" text-anchor="middle">${letters}</text><text x="${x}" y="${y + 12}" text-anchor="middle">${number}</text>`

  function tagsOn(texts: string): string[] {
    const sheet = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 1000" font-size="10">${texts}</svg>`
    const list = 'tag,kind,description\nPDSHH-1204A,switch,Filter\nTT101,sensor,Tank\n'
    const files = new Map([
      ['machine.yaml', machineFile.replace('nfpa79', 'isa51')],
      ['data/devices.csv', list],
      ['drawings/L-1.svg', sheet],
    ])
    const [machine] = loadSound(files).machines
    if (!machine) throw new Error('no machine')
    const graph = graphOf(machine)
    const plan = machine.drawings.find(({ number }) => number.value === 'L-1')?.sheetList[0]
    return plan ? graph.mentionsOn(plan).map(({ is, written, text }) => `${is} ${written} at ${text.x.toFixed(0)} ${text.y.toFixed(0)}`) : []
  }

  test('is one tag, however the list writes it', () =>
    expect(tagsOn(balloon(100, 100, 'PDSHH', '1204A') + balloon(300, 100, 'TT', '101'))).toEqual([
      expect.stringMatching(/^known PDSHH-1204A at 100 /),
      expect.stringMatching(/^known TT101 at 300 /),
    ]))

  test('of no device is an unknown tag', () => expect(tagsOn(balloon(100, 100, 'PIC', '7'))).toEqual([expect.stringMatching(/^unknown PIC-7 at /)]))

  test.each([
    ['letters of no loop tag', balloon(100, 100, 'NPT', '101')],
    ['a number far below', `${balloon(100, 100, 'TT', '')}<text x="100" y="160" text-anchor="middle">101</text>`],
    ['a number beside', '<text x="100" y="100" text-anchor="middle">TT</text><text x="130" y="112" text-anchor="middle">101</text>'],
    ['a number above', balloon(100, 100, '101', 'TT')],
  ])('%s is none', (_, texts) => expect(tagsOn(texts)).toEqual([]))
})
