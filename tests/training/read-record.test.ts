import { expect, test } from 'vitest'
import { readRecord } from '../../src/training/read-record.ts'
import { namesOf } from '../../src/training/record.ts'

const passed = { event: 'passed', person: 'P-1', lesson: 'lock-out', revision: 'A', date: '2026-11-25', score: { right: 4, of: 5 } }
const inspected = { event: 'inspected', procedure: 'LO-1', people: ['P-1', 'P-2'], by: 'A-1', date: '2026-11-25' }

test.each<[object]>([
  [passed],
  [{ event: 'assigned', person: 'P-1', lesson: 'lock-out', revision: '007', date: '2026-11-25' }],
  [{ ...passed, event: 'waived', by: 'A-1', reason: 'trained by the maker' }],
  [inspected],
  [{ ...inspected, retrain: ['P-2'], reason: 'did not try the start button' }],
  [{ event: 'named', person: 'P-1', name: '佐藤 花子' }],
])('%j is a record', (value) => expect(readRecord(value)).toEqual({ record: value }))

test.each<[string, unknown, string, string]>([
  ['a list', [passed], '', 'object'],
  ['nothing', null, '', 'object'],
  ['no event', { person: 'P-1' }, 'event', 'missing'],
  ['an event that is none', { ...passed, event: 'won' }, 'event', 'event'],
  ['an event of the prototype', { ...passed, event: 'constructor' }, 'event', 'event'],
  ['no person', { ...passed, person: undefined }, 'person', 'missing'],
  ['a birthday', { ...passed, born: '1990-01-01' }, 'born', 'unknown'],
  ['a number as revision', { ...passed, revision: 7 }, 'revision', 'text'],
  ['blanks round an id', { ...passed, person: ' P-1' }, 'person', 'text'],
  ['two lines', { ...passed, reason: 'a\nb' }, 'reason', 'text'],
  ['half a surrogate pair', { ...passed, name: '\ud83d' }, 'name', 'text'],
  ['a day that is none', { ...passed, date: '2025-02-29' }, 'date', 'day'],
  ['more right than asked', { ...passed, score: { right: 6, of: 5 } }, 'score', 'score'],
  ['a score of no questions', { ...passed, score: { right: 0, of: 0 } }, 'score', 'score'],
  ['a score with more in it', { ...passed, score: { right: 1, of: 1, percent: 100 } }, 'score', 'score'],
  ['a sign-off by nobody', { ...passed, event: 'signed-off' }, 'by', 'missing'],
  ['a waiver without a reason', { ...passed, event: 'waived', by: 'A-1' }, 'reason', 'missing'],
  ['an inspection of nobody', { ...inspected, people: [] }, 'people', 'people'],
  ['one person twice', { ...inspected, people: ['P-1', 'P-1'] }, 'people', 'people'],
  ['a person who was not there', { ...inspected, retrain: ['P-3'], reason: 'r' }, 'retrain', 'not-included'],
  ['to be trained again without a reason', { ...inspected, retrain: ['P-1'] }, 'reason', 'missing'],
  ['a name without a person', { event: 'named', name: 'Ana' }, 'person', 'missing'],
])('%s is none', (_, value, path, wrong) => expect(readRecord(value)).toEqual({ problem: { path, wrong } }))

test('the last name of a person counts', () => {
  const names = namesOf([
    { event: 'named', person: 'P-1', name: 'Ana' },
    { event: 'completed', person: 'P-2', name: 'Sam', lesson: 'lock-out', revision: 'A', date: '2026-11-25' },
    { event: 'named', person: 'P-1', name: 'Ana Gómez' },
  ])
  expect([...names]).toEqual([
    ['P-1', 'Ana Gómez'],
    ['P-2', 'Sam'],
  ])
})
