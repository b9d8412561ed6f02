import { describe, expect, test } from 'vitest'
import { type InspectionQuestion, inspectionsOf } from '../../src/training/inspection.ts'
import type { InspectionRecord, LessonRecord, TrainingRecord } from '../../src/training/record.ts'
import { type RetrainingQuestion, retrainingOf } from '../../src/training/retraining.ts'

const today = '2026-11-25'
const inspected = (date: string, by: string, people: readonly string[], more: Partial<InspectionRecord> = {}): InspectionRecord => ({
  event: 'inspected',
  procedure: 'LO-1',
  people,
  by,
  date,
  ...more,
})

// 29 CFR 1910.147(c)(6)(i): at least once a year, by an authorised person who does not use the procedure; from memory.
describe('the yearly inspection', () => {
  const authorised = new Set(['A1', 'A2'])
  const of = (records: readonly TrainingRecord[], on = today, more: Partial<InspectionQuestion> = {}) =>
    inspectionsOf({ procedures: ['LO-1'], records, today: on, isAuthorised: (person) => authorised.has(person), ...more })[0]

  test('was never made', () => expect(of([])).toEqual({ procedure: 'LO-1', status: 'never', void: [] }))

  test.each([
    ['2025-11-26', 'ok'],
    ['2025-11-25', 'due'],
    ['2026-11-26', 'never'],
  ])('made on %s is %s', (date, expected) => expect(of([inspected(date, 'A1', ['P1'])])?.status).toBe(expected))

  test('is due a year after, at the end of February too', () => {
    expect(of([inspected('2024-02-29', 'A1', ['P1'])])?.due).toBe('2025-02-28')
  })

  test('by one of the users, or by a person who is not authorised, does not count', () => {
    const [good, byUser, byOther] = [
      inspected('2026-01-01', 'A1', ['P1']),
      inspected('2026-02-01', 'a1', ['A1', 'P1']),
      inspected('2026-03-01', 'P9', ['P1']),
    ]
    expect(of([good, byOther, byUser])).toEqual({
      procedure: 'LO-1',
      status: 'ok',
      last: good,
      due: '2027-01-01',
      void: [
        { record: byUser, why: 'inspector-included' },
        { record: byOther, why: 'inspector-not-authorised' },
      ],
    })
  })

  test('of one procedure says nothing of another', () => {
    const found = of([inspected('2026-01-01', 'A1', ['P1'])], today, { procedures: ['LO-2'] })
    expect(found?.status).toBe('never')
  })
})

describe('who has to be trained again', () => {
  const lesson = {
    id: 'lock-out',
    revision: 'B',
    isAssessed: true,
    needsSignOff: false,
    validMonths: 36,
    retrains: 'major' as const,
    history: [
      { revision: 'A', date: '2020-01-01', change: 'text' as const },
      { revision: 'B', date: '2026-06-01', change: 'procedure' as const, what: 'the ball valve is locked first' },
    ],
    procedures: ['LO-1'],
  }
  const passed = (date: string): LessonRecord => ({ event: 'passed', person: 'P1', lesson: 'lock-out', revision: 'B', date })
  const of = (records: readonly TrainingRecord[], more: Partial<RetrainingQuestion> = {}) =>
    retrainingOf({ people: [{ person: 'P1', lessons: ['lock-out'], lessonsBefore: ['lock-out'] }], lessons: [lesson], records, today, ...more })
  const why = (records: readonly TrainingRecord[], more: Partial<RetrainingQuestion> = {}) =>
    of(records, more).flatMap(({ reasons }) => reasons.map((it) => (it.why === 'changed' ? `${it.why} ${it.change}` : it.why)))
  const gaps = { retrain: ['P1'], reason: 'did not try the start button' }

  test('nobody whose training holds', () => expect(of([passed('2026-07-01')])).toEqual([]))
  test('nobody who never was trained: that is training, and no retraining', () => expect(of([])).toEqual([]))

  test('a role that asks for more', () => {
    const people = [{ person: 'P1', lessons: ['lock-out'], lessonsBefore: [] }]
    expect(of([], { people })).toEqual([{ person: 'P1', lesson: 'lock-out', reasons: [{ why: 'new-role' }] }])
    expect(of([passed('2026-07-01')], { people })).toEqual([])
  })

  test('a procedure that changed, in the words of its revision', () => {
    const [change] = lesson.history.slice(1)
    expect(of([passed('2026-05-31')])).toEqual([{ person: 'P1', lesson: 'lock-out', reasons: [{ why: 'changed', ...change }] }])
  })

  test('a hazard that a change of the machine brings, before the lesson is revised', () => {
    const changes = [{ lesson: 'lock-out', change: 'new-hazard' as const, date: '2026-11-01', what: 'a second motor' }]
    expect(why([passed('2026-07-01')], { changes })).toEqual(['changed new-hazard'])
    expect(why([passed('2026-11-01')], { changes })).toEqual([])
    expect(why([passed('2026-07-01')], { changes: changes.map((it) => ({ ...it, change: 'text' as const })) })).toEqual([])
  })

  test.each<[string, TrainingRecord[], string[]]>([
    ['gaps at an inspection', [passed('2026-07-01'), inspected('2026-08-01', 'A1', ['P1', 'P2'], gaps)], ['inspection']],
    ['gaps of another', [passed('2026-07-01'), inspected('2026-08-01', 'A1', ['P1', 'P2'], { ...gaps, retrain: ['P2'] })], []],
    ['trained again since', [passed('2026-07-01'), inspected('2026-08-01', 'A1', ['P1'], gaps), passed('2026-08-02')], []],
    ['trained again on the spot', [passed('2026-07-01'), inspected('2026-08-01', 'A1', ['P1'], gaps), passed('2026-08-01')], []],
    ['inspected after the training of that day', [passed('2026-08-01'), inspected('2026-08-01', 'A1', ['P1'], gaps)], ['inspection']],
    ['at another procedure', [passed('2026-07-01'), inspected('2026-08-01', 'A1', ['P1'], { ...gaps, procedure: 'LO-2' })], []],
    ['lapsed, and changed meanwhile', [passed('2023-11-25')], ['lapsed', 'changed procedure']],
    ['revoked', [passed('2026-07-01'), { ...passed('2026-08-01'), event: 'revoked', by: 'A1', reason: 'cut a lock' }], ['revoked']],
  ])('%s', (_, records, expected) => expect(why(records)).toEqual(expected))
})
