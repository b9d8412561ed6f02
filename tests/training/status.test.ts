import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isSamePerson } from '../../src/training/person.ts'
import type { LessonRecord, TrainingRecord } from '../../src/training/record.ts'
import { type Status, statuses, statusOf } from '../../src/training/status.ts'
import type { TaughtLesson } from '../../src/training/taught-lesson.ts'

const today = '2026-11-25'
const lesson: TaughtLesson = {
  id: 'lock-out',
  revision: 'C',
  isAssessed: true,
  needsSignOff: true,
  validMonths: 36,
  retrains: 'major',
  history: [
    { revision: 'A', date: '2020-01-01', change: 'procedure' },
    { revision: 'B', date: '2026-06-01', change: 'new-hazard' },
    { revision: 'C', date: '2026-08-01', change: 'text' },
  ],
}
const unchanging: TaughtLesson = { ...lesson, retrains: 'never' }

const of = (event: LessonRecord['event'], date: string, more: Partial<LessonRecord> = {}): LessonRecord => ({
  event,
  person: 'P-1',
  lesson: 'lock-out',
  revision: 'C',
  date,
  ...more,
})
const signed = (date: string, by = 'P-7') => of('signed-off', date, { by })
const passedAndSigned = (date: string) => [of('passed', date), signed(date)]
const find = (records: readonly TrainingRecord[], it = lesson, on = today) => statusOf({ lesson: it, records, person: 'P-1', today: on })

// Cases C17 to C19: the order of the statuses and the month rule, computed by hand.
test.each<[string, TaughtLesson, TrainingRecord[], Status]>([
  ['no record', lesson, [], 'missing'],
  ['failed', lesson, [of('failed', today)], 'failed'],
  ['nobody signed', lesson, [of('passed', today)], 'not-signed-off'],
  ['signed by the learner', lesson, [of('passed', today), signed(today, 'P-1')], 'self-signed'],
  ['36 months to the day', unchanging, passedAndSigned('2023-11-25'), 'expired'],
  ['36 months but for a day', unchanging, passedAndSigned('2023-11-26'), 'ok'],
  ['the day before the change', lesson, passedAndSigned('2026-05-31'), 'outdated'],
  ['the day of the change', lesson, passedAndSigned('2026-06-01'), 'ok'],
  // And what people do besides.
  ['signed by the learner in another spelling', lesson, [of('passed', today), signed(today, 'p 1')], 'self-signed'],
  ['signed by the learner and by another', lesson, [of('passed', today), signed(today, 'P-1'), signed(today)], 'ok'],
  ['signed the day before the result', lesson, [signed('2026-11-23'), of('passed', '2026-11-24')], 'not-signed-off'],
  ['signed first on the day of the result', lesson, [signed(today), of('passed', today)], 'ok'],
  ['read, and not answered', lesson, [of('completed', today), signed(today)], 'missing'],
  ['read, where nothing is asked', { ...lesson, isAssessed: false }, [of('completed', today), signed(today)], 'ok'],
  ['passed, then failed', lesson, [...passedAndSigned('2026-10-01'), of('failed', today)], 'failed'],
  ['failed, then passed', lesson, [of('failed', '2026-10-01'), ...passedAndSigned(today)], 'ok'],
  ['failed, then read again', lesson, [of('failed', '2026-10-01'), of('completed', today)], 'failed'],
  ['written in another order than it happened', lesson, [...passedAndSigned(today), of('failed', '2026-10-01')], 'ok'],
  ['taken again before it lapsed, not signed again', lesson, [...passedAndSigned('2026-07-01'), of('passed', today)], 'ok'],
  ['revoked', lesson, [...passedAndSigned('2026-10-01'), of('revoked', today, { by: 'P-9', reason: 'used no lock' })], 'missing'],
  ['waived', lesson, [of('waived', today, { by: 'P-9', reason: 'trained by the maker' })], 'ok'],
  ['waived by the learner', lesson, [of('waived', today, { by: 'P-1', reason: 'knows it' })], 'self-signed'],
  ['waived too long ago', unchanging, [of('waived', '2023-11-25', { by: 'P-9', reason: 'trained by the maker' })], 'expired'],
  ['on a later day', lesson, passedAndSigned('2026-11-26'), 'missing'],
  ['taken in an old revision after the change', lesson, [of('passed', '2026-09-01', { revision: 'A' }), signed('2026-09-01')], 'outdated'],
  ['any change counts', { ...lesson, retrains: 'any' }, passedAndSigned('2026-07-01'), 'outdated'],
  ['words alone do not count', lesson, [of('passed', '2026-07-01', { revision: 'B' }), signed('2026-07-01')], 'ok'],
  ['of another lesson', { ...lesson, id: 'other' }, passedAndSigned(today), 'missing'],
])('%s: %s', (_, it, records, expected) => expect(find(records, it).status).toBe(expected))

test('says which record decided, who signed, when it ends and what changed', () => {
  const [passed, signature] = passedAndSigned('2026-05-31')
  expect(find(passedAndSigned('2026-05-31'))).toEqual({
    status: 'outdated',
    record: passed,
    signOff: signature,
    ends: '2029-05-31',
    change: lesson.history[1],
  })
})

test('a change that is still to come is none', () => {
  expect(find(passedAndSigned('2026-05-31'), lesson, '2026-05-31').status).toBe('ok')
})

test('one person in several spellings', () => {
  expect(['p-0042', 'P 0042', 'P0042', 'Ｐ-0042'].every((id) => isSamePerson(id, 'P-0042'))).toBe(true)
  expect(isSamePerson('P-42', 'P-0042')).toBe(false)
  expect(isSamePerson('--', '..')).toBe(false)
})

describe('laws', () => {
  const days = ['2023-01-10', '2023-11-25', '2024-02-29', '2026-05-31', '2026-06-01', '2026-11-25', '2026-12-01']
  const record = fc.record({
    event: fc.constantFrom('assigned', 'completed', 'passed', 'failed', 'signed-off', 'waived', 'revoked' as const),
    date: fc.constantFrom(...days),
    by: fc.constantFrom('P-1', 'P-7'),
    revision: fc.constantFrom('A', 'B', 'C'),
  })
  const records = fc.array(
    record.map(({ event, date, ...more }) => of(event, date, { ...more, reason: 'r' })),
    { maxLength: 8 },
  )
  const rank = (status: Status) => statuses.indexOf(status)

  test('one more pass or sign-off never makes it worse', () => {
    fc.assert(
      fc.property(records, fc.constantFrom('passed', 'signed-off' as const), fc.constantFrom(...days), (before, event, date) => {
        const after = [...before, of(event, date, { by: 'P-7' })]
        // A pass after a failure is a new beginning, and so never worse than failed.
        expect(rank(find(after).status)).toBeGreaterThanOrEqual(rank(find(before).status))
      }),
      { numRuns: 2000 },
    )
  })

  test('a failure or a revocation today leaves no status that holds', () => {
    fc.assert(
      fc.property(records, fc.constantFrom('failed', 'revoked' as const), (before, event) => {
        const found = find([...before, of(event, today, { by: 'P-7', reason: 'r' })])
        expect(found.status).toBe(event === 'failed' ? 'failed' : 'missing')
      }),
    )
  })

  test('what is ok has not ended, and is no longer ok on the day it ends', () => {
    fc.assert(
      fc.property(records, (its) => {
        const found = find(its)
        if (found.status !== 'ok') return
        expect(found.ends !== undefined && found.ends > today).toBe(true)
        const later = find(
          its.filter(({ date }) => date <= today),
          lesson,
          found.ends,
        )
        expect(later.status).not.toBe('ok')
      }),
      { numRuns: 1000 },
    )
  })

  test('records of others do not count', () => {
    fc.assert(
      fc.property(records, records, (its, others) => {
        expect(find([...others.map((it) => ({ ...it, person: 'P-2' })), ...its])).toEqual(find(its))
      }),
    )
  })
})
