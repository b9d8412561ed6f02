import { describe, expect, test } from 'vitest'
import type { LessonRecord } from '../../src/training/record.ts'
import { type SkillLesson, skillLevels } from '../../src/training/skill-levels.ts'
import { coverOf, gapOf, type Level, type NeededSkill, type SkilledPerson } from '../../src/training/skills.ts'

const needed: NeededSkill[] = [
  { id: 'loto', level: 3 },
  { id: 'cam', level: 2 },
  { id: 'plc', level: 1 },
]
const personAt = (person: string, levels: Record<string, Level>): SkilledPerson => ({ person, levels: new Map(Object.entries(levels)) })
const team = [personAt('P1', { loto: 4, cam: 1 }), personAt('P2', { loto: 2, cam: 3, plc: 1 }), personAt('P3', {})]

// Case C21, computed by hand.
test('gaps, single points and trainers', () => {
  expect(team.map((it) => needed.map((skill) => gapOf(skill, it)))).toEqual([
    [0, 1, 1],
    [1, 0, 0],
    [3, 2, 1],
  ])
  expect(coverOf(needed, team)).toEqual([
    { skill: 'loto', able: ['P1'], singlePoint: 'P1', trainers: ['P1'], tooFew: 0 },
    { skill: 'cam', able: ['P2'], singlePoint: 'P2', trainers: [], tooFew: 0 },
    { skill: 'plc', able: ['P2'], singlePoint: 'P2', trainers: [], tooFew: 0 },
  ])
})

test('how many are missing, and two are no single point', () => {
  const two = [...team, personAt('P4', { loto: 3 })]
  expect(coverOf([{ id: 'loto', level: 3, people: 3 }], two)).toEqual([{ skill: 'loto', able: ['P1', 'P4'], trainers: ['P1'], tooFew: 1 }])
  expect(coverOf([{ id: 'cam', level: 4 }], team)).toEqual([{ skill: 'cam', able: [], trainers: [], tooFew: 1 }])
})

describe('levels from records', () => {
  const today = '2026-11-25'
  const lesson = (id: string, level: Level): SkillLesson => ({
    id,
    level,
    revision: 'A',
    isAssessed: true,
    needsSignOff: false,
    retrains: 'major',
    history: [],
  })
  const lessons = [lesson('why', 1), lesson('watch', 2), lesson('alone', 3), lesson('teach', 4)]
  const of = (event: LessonRecord['event'], person: string, id: string, date: string, by?: string): LessonRecord => ({
    event,
    person,
    lesson: id,
    revision: 'A',
    date,
    ...(by ? { by, reason: 'r' } : {}),
  })
  const pass = (person: string, ids: readonly string[], date: string) => ids.map((id) => of('passed', person, id, date))
  const levels = (records: LessonRecord[], qualified: string[] = [], its = lessons) =>
    Object.fromEntries(skillLevels({ lessons: its, records, today, qualified }))
  const all = ['why', 'watch', 'alone', 'teach']

  test('the highest lesson that is taken with all below it', () => {
    expect(levels([...pass('P1', ['why', 'watch'], '2026-01-01'), ...pass('P2', ['watch'], '2026-01-01')])).toEqual({ P1: 2, P2: 0 })
    expect(levels(pass('P1', ['why'], '2026-12-01'))).toEqual({})
  })

  test('a skill without a lesson of a level goes from the one below to the one above', () => {
    const two = [lesson('why', 0), lesson('watch', 2)]
    expect(levels(pass('P1', ['why', 'watch'], '2026-01-01'), [], two)).toEqual({ P1: 2 })
    expect(levels(pass('P1', ['watch'], '2026-01-01'), [], two)).toEqual({ P1: 0 })
  })

  test('level 3 and 4 want a signature of one who has level 4 or is qualified', () => {
    const passed = pass('P1', all, '2026-01-01')
    const signatures = (by: string) => [of('signed-off', 'P1', 'alone', '2026-01-02', by), of('signed-off', 'P1', 'teach', '2026-01-02', by)]
    expect(levels(passed)).toEqual({ P1: 2 })
    expect(levels([...passed, ...signatures('Q1')])).toEqual({ P1: 2 })
    expect(levels([...passed, ...signatures('Q1')], ['Q1'])).toEqual({ P1: 4 })
    expect(levels([...passed, ...signatures('P1')], ['P1'])).toEqual({ P1: 2 })
  })

  test('a trainer makes the next one, on the same day too', () => {
    const records = ['P1', 'P2', 'P3'].flatMap((person, index) => [
      ...pass(person, all, '2026-01-01'),
      ...['alone', 'teach'].map((id) => of('signed-off', person, id, '2026-02-01', index === 0 ? 'Q1' : `P${index}`)),
    ])
    expect(levels(records.reverse(), ['Q1'])).toEqual({ P1: 4, P2: 4, P3: 4 })
  })

  test('two who sign for each other gain nothing', () => {
    const records = [
      ['P1', 'P2'],
      ['P2', 'P1'],
    ].flatMap(([person = '', by]) => [
      ...pass(person, all, '2026-01-01'),
      ...['alone', 'teach'].map((id) => of('signed-off', person, id, '2026-02-01', by)),
    ])
    expect(levels(records)).toEqual({ P1: 2, P2: 2 })
  })

  test('the signer had level 4 on that day: later does not count, and a later lapse does no harm', () => {
    const short = lessons.map((it) => ({ ...it, validMonths: 6 }))
    const signed = (person: string, by: string, date: string) => ['alone', 'teach'].map((id) => of('signed-off', person, id, date, by))
    const trainer = [...pass('T1', all, '2026-01-01'), ...signed('T1', 'Q1', '2026-01-02')]
    const learner = [...pass('P1', all, '2026-06-20'), ...signed('P1', 'T1', '2026-06-21')]
    expect(levels([...trainer, ...learner], ['Q1'], short)).toEqual({ T1: 0, P1: 4 })
    const early = [...pass('P1', all, '2025-12-20'), ...signed('P1', 'T1', '2025-12-21')]
    expect(levels([...trainer, ...early], ['Q1'])).toEqual({ T1: 4, P1: 2 })
  })
})
