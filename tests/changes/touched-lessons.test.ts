import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { compareRecords } from '../../src/changes/compare-records.ts'
import { recordsOf } from '../../src/changes/records-of.ts'
import { touchedLessons } from '../../src/changes/touched-lessons.ts'
import { loadSound } from '../sound-machine.ts'

const lesson = `---
title: Look round
revision: A
minutes: 10
objectives: [Find the clamp]
covers: { tags: [PS-102], lockouts: [lo-1], alarms: [A01], pages: [procedures/start] }
---
Find <Fact of="tag" tag="PS-101" />.
`
const read = (path: string) => readFileSync(`tests/fixtures/sound-machine/${path}`, 'utf8')

const machineFile = read('machine.yaml').replace(
  'energy: { file: data/energy.yaml }',
  'energy: { file: data/energy.yaml }\n  hazards: { file: data/hazards.yaml }',
)
const hazards = (id: string) => `hazards:
  - id: ${id}
    name: { en: Pinch point, es: Atrapamiento }
    group: mechanical
    origin: { en: The clamp, es: La pinza }
    areas: [press]
    phases: [operation]
    tasks: [procedures/start]
    residual: { severity: minor-or-moderate-injury }
    builtIn: []
    user: [{ en: Instruct the operators, es: Instruir a los operadores }]
    assessment: RA-1 no. 1
    caution: crush
`

/** The touches after some texts were replaced, each as `lesson: what it calls for: by what`. */
function touches(path: string, ...edits: [string, string][]): string[] {
  const before = new Map([
    ['pages/lessons/look-round.mdx', lesson],
    ['machine.yaml', machineFile],
    ['data/hazards.yaml', hazards('pinch')],
  ])
  let text = before.get(path) ?? read(path)
  for (const [was, is] of edits) {
    expect(text).toContain(was)
    text = text.replace(was, is)
  }
  const sides = [before, new Map([...before, [path, text]])].map((changes) => {
    const { machines, findings: _, ...rest } = loadSound(changes)
    const [first, ...more] = machines
    if (!first) throw new Error('no machine')
    return { machines, records: recordsOf([first, ...more], rest) }
  })
  const [old, now] = sides
  if (!old || !now) throw new Error('no sides')
  const { changes } = compareRecords(old.records, now.records)
  return touchedLessons(changes, old.machines, now.machines).map(
    ({ lesson, calls, by }) =>
      `${lesson}: ${calls}: ${'page' in by ? `${by.page}${by.isGone ? ' gone' : ''}` : `${by.change.thing} ${by.change.is ?? by.change.was} ${by.change.kind}`}`,
  )
}

test.each([
  [
    'a device that it covers is elsewhere',
    'data/devices.csv',
    [['Supply pressure,pressure-switch,press', 'Supply pressure,pressure-switch,yard']],
    ['procedure: device PS-102 moved'],
  ],
  [
    'a device that it covers is described in other words',
    'data/devices.csv',
    [['Supply pressure', 'Pressure of the supply']],
    ['text: device PS-102 reworded'],
  ],
  ['an alarm that it covers is answered in another way', 'data/alarms.csv', [['low,stop', 'low,message']], ['procedure: alarm A01 reaction-changed']],
  [
    'an energy source of a lockout that it covers',
    'data/energy.yaml',
    [['value: 400', 'value: 480']],
    ['procedure: energy source supply energy-changed'],
  ],
  [
    'a device that isolates for a lockout that it covers',
    'data/devices.csv',
    [['isolator,press', 'isolator,yard']],
    ['procedure: device DISC1 moved'],
  ],
  [
    'a lockout that it covers has another text',
    'pages/lockout/lo-1.mdx',
    [['Open the press. Stop it.', 'Stop the press. Open it.']],
    ['procedure: lockout/lo-1'],
  ],
  [
    'a hazard of a task that it covers',
    'data/hazards.yaml',
    [['The clamp, es', 'The clamp and the ram, es']],
    ['new-hazard: hazard pinch hazard-changed'],
  ],
  ['a page that it covers has another text', 'pages/procedures/start.mdx', [['title: ', 'title: New ']], ['procedure: procedures/start']],
] satisfies [string, string, [string, string][], string[]][])('%s', (_, path, edits, expected) => {
  expect(touches(path, ...edits)).toEqual(expected.map((it) => `look-round: ${it}`))
})

test.each([
  ['a device that it only names', 'data/devices.csv', [['Clamp pressure', 'Pressure of the clamp']]],
  ['line breaks alone', 'pages/lockout/lo-1.mdx', [['<Include', '\n<Include']]],
  ['a page that it does not cover', 'pages/front/use.mdx', [['title: ', 'title: New ']]],
] satisfies [string, string, [string, string][]][])('nothing: %s', (_, path, edits) => expect(touches(path, ...edits)).toEqual([]))
