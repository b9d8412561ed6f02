import { expect, test } from 'vitest'
import { certificateOf } from '../../src/training/certificate.ts'
import type { TrainingRecord } from '../../src/training/record.ts'
import type { TaughtLesson } from '../../src/training/taught-lesson.ts'

const today = '2026-11-25'
const lock: TaughtLesson = {
  id: 'lock',
  revision: 'C',
  isAssessed: true,
  needsSignOff: true,
  validMonths: 36,
  retrains: 'major',
  history: [{ revision: 'C', date: '2026-06-01', change: 'procedure' }],
}
const tour: TaughtLesson = { id: 'tour', revision: 'A', isAssessed: false, needsSignOff: false, retrains: 'never', history: [] }

const took = (person: string, date: string, more: Partial<Extract<TrainingRecord, { lesson: string }>> = {}): TrainingRecord[] => [
  { event: 'passed', person, name: `Name ${person}`, lesson: 'lock', revision: 'C', date, ...more },
  { event: 'signed-off', person, lesson: 'lock', revision: 'C', by: 'P-0007', date },
  { event: 'completed', person, lesson: 'tour', revision: 'A', date },
]

const certified = (people: string[], records: TrainingRecord[], lessons = [lock, tour]) => certificateOf({ lessons, people, records, today })

test('name, dates, lesson and revision of who holds every lesson (C22)', () => {
  expect(certified(['P-1'], took('P-1', '2026-07-01'))).toEqual({
    certified: [
      {
        person: 'P-1',
        name: 'Name P-1',
        lessons: [
          { lesson: 'lock', revision: 'C', date: '2026-07-01', by: 'P-0007', ends: '2029-07-01' },
          { lesson: 'tour', revision: 'A', date: '2026-07-01' },
        ],
      },
    ],
    refused: [],
  })
})

test('whose status is not ok is refused, with each lesson and its status (C22)', () => {
  const records = [...took('P-1', '2026-05-31'), ...took('P-2', '2026-07-01').slice(0, 1), ...took('P-3', '2026-07-01', { event: 'failed' })]
  expect(certified(['P-1', 'P-2', 'P-3', 'P-4'], records).certified).toEqual([])
  expect(
    certified(['P-1', 'P-2', 'P-3', 'P-4'], records).refused.map(({ lessons }) => lessons.map(({ lesson, status }) => `${lesson} ${status}`)),
  ).toEqual([['lock outdated'], ['lock not-signed-off', 'tour missing'], ['lock failed'], ['lock missing', 'tour missing']])
})

test('nobody without a name, for a waived lesson, or for no lesson', () => {
  const nameless = took('P-1', '2026-07-01').map(({ name: _, ...it }: TrainingRecord & { name?: string }) => it as TrainingRecord)
  expect(certified(['P-1'], nameless)).toEqual({ certified: [], refused: [{ person: 'P-1', lessons: [] }] })
  const waived: TrainingRecord[] = [
    ...took('P-1', '2026-07-01').slice(2),
    {
      event: 'waived',
      person: 'P-1',
      name: 'Ana',
      lesson: 'lock',
      revision: 'C',
      by: 'P-0007',
      reason: 'Taught at the other plant',
      date: '2026-07-01',
    },
  ]
  expect(certified(['P-1'], waived).refused).toMatchObject([{ name: 'Ana', lessons: [{ lesson: 'lock', status: 'waived' }] }])
  expect(certified(['P-1'], took('P-1', '2026-07-01'), [])).toMatchObject({ certified: [], refused: [{ person: 'P-1' }] })
})
