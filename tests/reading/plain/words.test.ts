import { describe, expect, test } from 'vitest'
import type { BlockKind } from '../../../src/reading/block.ts'
import { machineWordsOf, nounClusters } from '../../../src/reading/plain/noun-cluster.ts'
import { findingsOf, inShort, kindsOf, viewsOf } from './read.ts'

const prose = (text: string, kind: BlockKind = 'paragraph') => inShort(findingsOf(kind, text))

// Source: ASD-STE100 Issue 9, rule 2.1.
describe('nouns in a row', () => {
  test.each([
    'hydraulic pump pressure relief valve',
    'main gearbox oil filter cartridge',
    'coolant tank drain valve handle',
    'emergency stop circuit fault lamp',
    'conveyor belt drive motor',
  ])('too many: %s', (name) => {
    expect(kindsOf('paragraph', `The ${name} is on the left.`)).toEqual(['noun-cluster'])
  })

  test.each([
    'oil filter cartridge',
    'motor temperature sensor',
    'emergency stop button',
    'drive motor of the conveyor belt',
    'clean dry air supply',
    'pump, valve, tank and motor',
    'pressure switches and drain valves',
    'oil that pump motors need',
  ])('not too many: %s', (name) => {
    expect(kindsOf('paragraph', `The ${name} is on the left.`)).toEqual([])
  })

  test.each([
    'Drain valve handle position B.',
    'To pump tank water out, press S1.',
    'Stop and drain tank water.',
    'Read the label "pump oil filter pressure".',
    'The pump motor drives belt rollers.',
  ])('a verb or a label is none: %s', (text) => {
    expect(prose(text)).toEqual([])
  })

  test('the name of a part of the machine is one word', () => {
    const text = 'The conveyor belt drive motor is on the left. The wash tank heater cover lamp is red.'
    const clusters = (names: string[]) => viewsOf('paragraph', text).flatMap((view) => nounClusters(view, machineWordsOf(names)))
    expect(clusters([]).map(({ count }) => count?.is)).toEqual([4, 5])
    expect(clusters(['Conveyor belt', 'wash tank heater']).map(({ words }) => words)).toEqual([])
    expect(clusters(['tank'])).toHaveLength(2)
  })
})

// Source: ASD-STE100 Issue 9, rule 4.2.
describe('a contraction', () => {
  test.each([
    ["Don't touch the plate.", ["contraction: Don't → Do not"]],
    ['You can’t see it.', ['contraction: can’t → cannot']],
    ["It's hot, and they'll burn you.", ["contraction: It's", "contraction: they'll → they will"]],
    ["The pump's seal and the valves' springs.", []],
    ["The operator's key.", []],
    ['The screen says "Don\'t touch".', []],
  ])('%s', (text, found) => {
    expect(prose(text)).toEqual(found)
  })
})

// Source: ASD-STE100 Issue 9, rule 8.1.
describe('a semicolon', () => {
  test('joins two sentences', () => {
    expect(findingsOf('paragraph', 'Do not touch the plate; it is hot.')).toMatchObject([{ kind: 'semicolon', start: 22, end: 23, words: ';' }])
  })

  test.each<[string, BlockKind]>([
    ['The plate is hot; it burns.', 'cell'],
    ['See the sensors B12; B13; B14.', 'paragraph'],
    ['Values: 5 mm; 6 mm; 7 mm.', 'paragraph'],
    ['Use \uFFFC; \uFFFC or \uFFFC.', 'paragraph'],
  ])('parts a list: %s', (text, kind) => {
    expect(prose(text, kind)).toEqual([])
  })
})

describe('a word that stands twice', () => {
  test.each([
    ['Open the the valve.', ['doubled-word: the the → the']],
    ['Open the\nthe valve.', ['doubled-word: the\nthe → the']],
    ['The the the lamp is red.', ['doubled-word: The the the → The']],
    ['The lamp had had a fault.', []],
    ['He says that that lamp is red.', []],
    ['The values are 5, 5 and 6.', []],
    ['The code is 12 12.', []],
    ['In Walla Walla it rains.', []],
    ['The screen shows "Wait wait".', []],
    ['It is on. On it goes.', []],
  ])('%s', (text, found) => {
    expect(prose(text)).toEqual(found)
  })
})

describe('a negative on a negative', () => {
  test.each([
    ['It does not start unless the guard is not open.', 'not start unless the guard is not'],
    ['Not unless the lamp is on.', 'Not unless'],
    ['The pump does not stop until the valve is not open.', 'not stop until the valve is not'],
    ['Leaks are not uncommon.', 'not uncommon'],
    ['Do not fail to lock the switch.', 'not fail to'],
    ["It doesn't do nothing.", "doesn't do nothing"],
    ['Unless the lamp is not on, press S1.', 'Unless the lamp is not'],
  ])('%s', (text, words) => {
    expect(findingsOf('paragraph', text).filter(({ kind }) => kind === 'stacked-negative')).toMatchObject([{ words }])
  })

  test.each([
    'Do not start the pump unless the guard is shut.',
    'Do not touch the plate and do not open the guard.',
    'If the lamp is not on, do not start the pump.',
    'Do not run the pump without oil.',
    'Never work alone, and do not smoke.',
    'Do not open the door until the belt no longer moves.',
    'The switch is not unlocked.',
    'Not only the lamp but also the horn tells of it.',
    'Nobody may open it when the lamp is not green.',
  ])('side by side they are fine: %s', (text) => {
    expect(prose(text)).toEqual([])
  })
})

describe('a word with a plainer one', () => {
  test.each([
    ['Utilise the crank.', ['plain-word: Utilise → Use']],
    ['Prior to cleaning, stop the pump in order to cool it.', ['plain-word: Prior to → Before', 'plain-word: in order to → to']],
    ['The cycle commenced and was terminated.', ['plain-word: commenced → started', 'plain-word: terminated → ended']],
    ['Ensure that the door is shut.', ['plain-word: Ensure that → Make sure that']],
    ['Depress the pedal.', ['plain-word: Depress → Press']],
    ['The cable is terminated at X1.', []],
    ['Pull the lever to ensure correct operation.', []],
    ['The screen shows "Commence cycle".', []],
    ['The function of the lamp is to demonstrate a fault.', []],
    ['A depression in the plate.', []],
  ])('%s', (text, found) => {
    expect(prose(text)).toEqual(found)
  })
})

test.each(
  'nuts, ball bearing, hole, joint, burn, hook, butt weld, dead time, steam trap, white wire, host computer, male connector, master, slave, abort, kill switch'.split(
    ', ',
  ),
)('a word of the trade is no finding: %s', (word) => {
  expect(prose(`The ${word} must be on the left.`)).toEqual([])
})
