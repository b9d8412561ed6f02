import { describe, expect, test } from 'vitest'
import type { Lesson } from '../../src/training/lesson.ts'
import { packingOf } from '../../src/training/packing.ts'
import { positionalWeights } from '../../src/training/priorities.ts'
import type { SessionLimits } from '../../src/training/session-minutes.ts'
import { sessionsOf } from '../../src/training/sessions.ts'
import { lessonsOf, published } from './assembly-lines.ts'
import { isPlan } from './every-plan.ts'

const lesson = (id: string, minutes: number, needs: string[] = [], needsSignedOff: string[] = []): Lesson => ({ id, minutes, needs, needsSignedOff })

/** The sessions as text, `a b 30 | c 10`. */
function cut(lessons: readonly Lesson[], limits: SessionLimits) {
  const result = sessionsOf(lessons, limits)
  return 'sessions' in result
    ? result.sessions.map((it) => [...it.lessons, it.minutes, ...(it.day ? [`day ${it.day}`] : [])].join(' ')).join(' | ')
    : result
}

/** Seconds of processor time, which a busy computer leaves as they are. */
function secondsOf(work: () => void): number {
  const before = process.cpuUsage()
  work()
  return process.cpuUsage(before).user / 1e6
}

describe('the fewest sessions that were published (C1 to C9)', () => {
  test.each(published)(
    '$name at $limit: $fewest',
    ({ lessons, limit, fewest }) => {
      const seconds = secondsOf(() => {
        const result = sessionsOf(lessons, { minutes: limit })
        expect(result).toMatchObject({ optimal: true, lowerBound: fewest })
        const sessions = 'sessions' in result ? result.sessions.map((it) => it.lessons) : []
        expect(sessions).toHaveLength(fewest)
        expect(isPlan(sessions, lessons, limit)).toBe(true)
      })
      expect(seconds).toBeLessThan(2)
    },
    60_000,
  )

  test('are 34 of 6 lines', () => {
    expect(published).toHaveLength(34)
    expect(new Set(published.map(({ name }) => name)).size).toBe(6)
  })
})

test('positional weights of Jackson (C10)', () => {
  const jackson = published.find(({ name }) => name === 'Jackson')?.lessons ?? []
  expect(positionalWeights(packingOf(jackson, 21))).toEqual([46, 19, 17, 19, 13, 17, 12, 15, 9, 9, 4])
})

test('a lesson that no session takes is named, with its minutes and the limit (C12)', () => {
  expect(sessionsOf([lesson('K', 30), lesson('L', 95)], { minutes: 90 })).toEqual({ tooLong: [{ lesson: 'L', minutes: 95, limitMinutes: 90 }] })
  expect(cut([lesson('L', 90)], { minutes: 90 })).toBe('L 90')
})

test('what must be signed off before waits for another session (C13)', () => {
  const quiz = lesson('quiz', 10, ['demo'])
  expect(cut([lesson('theory', 30), lesson('demo', 20, [], ['theory']), quiz], { minutes: 90 })).toBe('theory 30 | demo quiz 30')
  expect(cut([lesson('theory', 30), lesson('demo', 20, ['theory']), quiz], { minutes: 90 })).toBe('theory demo quiz 60')
})

test('a loop is said instead of a plan; a need of a lesson that is done is met', () => {
  expect(sessionsOf([lesson('A', 10, ['B']), lesson('B', 10, ['A'])], { minutes: 90 })).toEqual({
    cycles: [
      [
        { lesson: 'A', needs: 'B', in: 'needs' },
        { lesson: 'B', needs: 'A', in: 'needs' },
      ],
    ],
  })
  expect(cut([lesson('A', 10, ['done'], ['also done'])], { minutes: 90 })).toBe('A 10')
  expect(sessionsOf([], { minutes: 45 })).toEqual({ sessions: [], optimal: true, lowerBound: 0, nearest: true })
})

test('of the plans with the fewest sessions the nearest to the author counts', () => {
  const lessons = [lesson('A', 40), lesson('B', 30), lesson('C', 20), lesson('D', 5), lesson('E', 25)]
  expect(cut(lessons, { minutes: 60 })).toBe('A C 60 | B D E 60')
  expect(cut(lessons, { minutes: 70 })).toBe('A B 70 | C D E 50')
})

describe('breaks', () => {
  test.each([
    [{ minutes: 100, breakAfterMinutes: 45, breakMinutes: 10 }, 'A B C 100'],
    [{ minutes: 99, breakAfterMinutes: 45, breakMinutes: 10 }, 'A B 70 | C 30'],
    [{ minutes: 45, breakAfterMinutes: 45, breakMinutes: 10 }, 'A 30 | B 30 | C 30'],
    [{ minutes: 55, breakAfterMinutes: 45, breakMinutes: 10 }, 'A 30 | B 30 | C 30'],
    [{ minutes: 70, breakAfterMinutes: 45, breakMinutes: 10 }, 'A B 70 | C 30'],
    [{ minutes: 90, breakAfterMinutes: 45 }, 'A B C 90'],
    [{ minutes: 90, breakMinutes: 10 }, 'A B C 90'],
  ])('%o', (limits, expected) => expect(cut([lesson('A', 30), lesson('B', 30), lesson('C', 30)], limits)).toBe(expected))

  test('count against a long lesson', () => {
    expect(sessionsOf([lesson('L', 50)], { minutes: 54, breakAfterMinutes: 45, breakMinutes: 10 })).toEqual({
      tooLong: [{ lesson: 'L', minutes: 50, limitMinutes: 45 }],
    })
    expect(cut([lesson('L', 50)], { minutes: 60, breakAfterMinutes: 45, breakMinutes: 10 })).toBe('L 60')
  })
})

test('days are filled with the sessions in their order; a session is no longer than a day', () => {
  const lessons = [lesson('A', 40), lesson('B', 45), lesson('C', 30), lesson('D', 45)]
  expect(cut(lessons, { minutes: 45, dayMinutes: 90 })).toBe('A 40 day 1 | B 45 day 1 | C 30 day 2 | D 45 day 2')
  expect(cut(lessons, { minutes: 90, dayMinutes: 45 })).toBe('A 40 day 1 | B 45 day 2 | C 30 day 3 | D 45 day 4')
  expect(sessionsOf([lesson('L', 60)], { minutes: 90, dayMinutes: 45 })).toEqual({ tooLong: [{ lesson: 'L', minutes: 60, limitMinutes: 45 }] })
})

describe('what is too much to search', () => {
  const many = (count: number) =>
    lessonsOf(
      Array.from({ length: count }, (_, index) => 5 + ((index * 7) % 23)),
      [],
    )

  test.each([60, 120])(
    '%i lessons that need nothing get a plan with its bound at once',
    (count) => {
      const lessons = many(count)
      const seconds = secondsOf(() => {
        const result = sessionsOf(lessons, { minutes: 45 })
        if (!('sessions' in result)) throw new Error('no plan')
        expect(
          isPlan(
            result.sessions.map((it) => it.lessons),
            lessons,
            45,
          ),
        ).toBe(true)
        expect(result.sessions.length - result.lowerBound).toBeLessThanOrEqual(1)
        expect(result.optimal).toBe(result.sessions.length === result.lowerBound)
        expect(result.nearest).toBe(false)
      })
      expect(seconds).toBeLessThan(2)
    },
    60_000,
  )

  test('and is the same each time', () => {
    const lessons = many(60).map((it, index) => ({ ...it, needsSignedOff: index > 3 && index % 4 === 0 ? [String(index - 3)] : [] }))
    const first = sessionsOf(lessons, { minutes: 40 })
    expect(first).toHaveProperty('sessions')
    expect(sessionsOf(structuredClone(lessons), { minutes: 40 })).toEqual(first)
  }, 60_000)
})
