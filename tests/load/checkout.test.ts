import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { loadSound } from '../sound-machine.ts'

const machineText = readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8')

/** The sound machine with a checkout.yaml. */
function load(text: string) {
  const { machines, findings } = loadSound(new Map([['data/checkout.yaml', text]]))
  return {
    data: machines[0]?.checkout,
    findings: findings.map(({ place, rule, message, help }) => `${place.line}:${place.column} ${rule} ${message} | ${help ?? ''}`),
  }
}

const sound = `supplies:
  24V: { from: data sheet, nominalV: 24, lowestV: { value: 22.8, from: measured, source: at -X1 } }
cards:
  DI1: { from: data sheet, inputType: Type 3, sense: sinking, supply: 24V }
parts:
  100-01:
    technology: pressure-switch
    from: data sheet
    setBar: 6
    deadBandBar: { value: 0.5, from: measured, source: on the test bench }
devices:
  PS-101: { from: measured, cableLengthM: 10, supply: 24V }
`

test('every value keeps its place, what it rests on, and its source', () => {
  const { data, findings } = load(sound)
  expect(findings).toEqual([])
  const [part] = data?.parts ?? []
  expect(part?.name).toMatchObject({ value: '100-01', place: { line: 6, column: 3, endColumn: 9 } })
  expect(part?.technology?.value).toBe('pressure-switch')
  expect(part?.numbers.setBar).toMatchObject({ value: 6, from: 'data sheet', place: { line: 9, column: 13 } })
  expect(part?.numbers.deadBandBar).toMatchObject({ value: 0.5, from: 'measured', source: 'on the test bench', place: { line: 10, column: 27 } })
  expect(data?.supplies[0]?.lowestV).toMatchObject({ value: 22.8, from: 'measured', source: 'at -X1' })
  expect(data?.supplies[0]?.highestV).toBeUndefined()
  expect(data?.cards[0]?.choices).toMatchObject({ inputType: { value: 'Type 3', place: { line: 4, column: 39 } }, sense: { value: 'sinking' } })
  expect(data?.devices[0]?.texts.supply).toMatchObject({ value: '24V', place: { line: 12 } })
  expect(data?.devices[0]?.keys.map(({ value }) => value)).toEqual(['supply', 'cableLengthM'])
})

test('a machine without the file has no such data, and no finding', () => {
  const { machines, findings } = loadSound(new Map([['machine.yaml', machineText.replace(/ {2}checkout:.*\n/, '')]]))
  expect(machines[0]?.checkout).toBeUndefined()
  expect(findings).toEqual([])
})

describe('what is wrong is said at its place', () => {
  test.each([
    ['a misspelt value', 'setBar: 6', 'setBra: 6', '9:5 unknown-key `setBra` is not known in `parts.100-01` | write `setBar`, or remove it'],
    [
      'a value of another technology',
      'setBar: 6',
      'coilW: 6',
      '9:5 unknown-key `coilW` is not known in `parts.100-01` | remove it, or correct its spelling',
    ],
    [
      'an unknown technology',
      'pressure-switch',
      'pressure-switsh',
      '7:17 wrong-type `parts.100-01.technology` is `pressure-switsh` | write `pressure-switch`',
    ],
    [
      'a text for a number',
      'setBar: 6',
      'setBar: 6 bar',
      '9:13 wrong-type `parts.100-01.setBar` does not fit: it takes a number or keys and values, and holds `6 bar` | ',
    ],
    ['a number that cannot be', 'setBar: 6', 'setBar: -6', '9:13 wrong-type `parts.100-01.setBar` is `-6`, and must be more than 0 | '],
    ['a value without its origin', 'from: measured, source: on', 'source: on', '10:18 missing-key `parts.100-01.deadBandBar` has no `from` | '],
    [
      'an origin that is none',
      'from: measured, source: on',
      'from: guessed, source: on',
      '10:38 wrong-type `parts.100-01.deadBandBar.from` is `guessed` | write one of data sheet, standard, measured',
    ],
    ['an entry without its origin', '    from: data sheet\n', '', '7:5 missing-key `parts.100-01` has no `from` | '],
    [
      'a supply that cannot be',
      'value: 22.8',
      'value: 26',
      '2:38 wrong-type `supplies.24V.nominalV` is `24`, which lies outside `lowestV` and `highestV` | correct one of the three',
    ],
  ])('%s', (_, from, to, expected) => {
    expect(sound).toContain(from)
    expect(load(sound.replace(from, to)).findings).toEqual([expected])
  })
})
