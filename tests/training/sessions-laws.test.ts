import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exchangedPlan } from '../../src/training/exchanged-plan.ts'
import { fullestPlan } from '../../src/training/fullest-plan.ts'
import type { Lesson } from '../../src/training/lesson.ts'
import { nearerPlan } from '../../src/training/nearer-plan.ts'
import { orderOf } from '../../src/training/order.ts'
import { type Plan, packingOf } from '../../src/training/packing.ts'
import { seededRandom } from '../../src/training/random.ts'
import { sessionsOf } from '../../src/training/sessions.ts'
import { plainPlan } from '../../src/training/tried-plans.ts'
import { bestByTrying, isPlan } from './every-plan.ts'

/** Lessons without a loop in a mixed author's order; `strict` is the share of needs that are signed off. */
function randomLessons(seed: number, count: number, strict: number): Lesson[] {
  const random = seededRandom(seed)
  const workable = Array.from({ length: count }, (_, index) => {
    const all = Array.from({ length: index }, (_, need) => need).filter(() => random() < 0.3)
    const signed = new Set(all.filter(() => random() < strict))
    const id = (number: number) => `L${number}`
    return {
      id: id(index),
      minutes: 5 * (1 + Math.floor(random() * 6)),
      needs: all.filter((need) => !signed.has(need)).map(id),
      needsSignedOff: [...signed].map(id),
    }
  })
  return workable
    .map((it) => [random(), it] as const)
    .sort(([a], [b]) => a - b)
    .map(([, it]) => it)
}

test.each([0, 0.4])(
  '150 random plans are the best of all that can be tried, with a share of %d to be signed off',
  (strict) => {
    let sessions = 0
    for (let seed = 1; seed <= 150; seed++) {
      const lessons = randomLessons(seed, 3 + (seed % 4), strict)
      const limit = 30 + 5 * (seed % 7)
      const best = bestByTrying(lessons, limit)
      const result = sessionsOf(lessons, { minutes: limit })
      expect(result, `seed ${seed}`).toMatchObject({
        sessions: best.map((it) => ({ lessons: it })),
        optimal: true,
        nearest: true,
        lowerBound: best.length,
      })
      sessions += best.length
    }
    expect(sessions).toBeGreaterThan(300)
  },
  60_000,
)

const cases = fc.record({
  seed: fc.nat(),
  count: fc.integer({ min: 0, max: 40 }),
  strict: fc.constantFrom(0, 0.2, 1),
  minutes: fc.integer({ min: 30, max: 120 }),
})

test('each lesson is taught once, none before what it needs, no session above its limit, and the same again', () => {
  fc.assert(
    fc.property(cases, ({ seed, count, strict, minutes }) => {
      const lessons = randomLessons(seed, count, strict)
      const result = sessionsOf(lessons, { minutes })
      if (!('sessions' in result)) throw new Error('no plan')
      expect(
        isPlan(
          result.sessions.map((it) => it.lessons),
          lessons,
          minutes,
        ) || count === 0,
      ).toBe(true)
      for (const session of result.sessions) {
        expect(session.minutes).toBe(lessons.filter(({ id }) => session.lessons.includes(id)).reduce((sum, it) => sum + it.minutes, 0))
      }
      expect(result.lowerBound).toBeLessThanOrEqual(result.sessions.length)
      expect(sessionsOf(structuredClone(lessons), { minutes })).toEqual(result)
    }),
    { seed: 20261126, numRuns: 150 },
  )
}, 60_000)

test('an order has each lesson once, each behind its needs, and is the author’s where that can be taught', () => {
  fc.assert(
    fc.property(cases, ({ seed, count, strict }) => {
      const lessons = randomLessons(seed, count, strict)
      const result = orderOf(lessons)
      if (!('order' in result)) throw new Error('no order')
      const place = new Map(result.order.map((id, index) => [id, index]))
      expect([...place.keys()].sort()).toEqual(lessons.map(({ id }) => id).sort())
      for (const { id, needs, needsSignedOff } of lessons) {
        for (const need of [...needs, ...needsSignedOff]) expect(place.get(need)).toBeLessThan(place.get(id) ?? 0)
      }
      const again = orderOf(result.order.flatMap((id) => lessons.filter((it) => it.id === id)))
      expect(again).toEqual(result)
    }),
    { seed: 20261126, numRuns: 200 },
  )
})

test('what brings a plan nearer to the author’s order keeps it a plan with no more sessions', () => {
  fc.assert(
    fc.property(cases, ({ seed, count, strict, minutes }) => {
      const lessons = randomLessons(seed, count, strict)
      const packing = packingOf(lessons, minutes)
      const [plan, fuller] = [plainPlan(packing), fullestPlan(packing, packing.minutes)]
      for (const found of [plan, fuller]) {
        const near = exchangedPlan(packing, nearerPlan(packing, found))
        expect(isPlan(named(near, lessons), lessons, minutes) || count === 0).toBe(true)
        expect(near.length).toBeLessThanOrEqual(found.length)
        const exchangedOnly = exchangedPlan(packing, found)
        expect(exchangedOnly.length).toBeLessThanOrEqual(found.length)
        expect(isPlan(named(exchangedOnly, lessons), lessons, minutes) || count === 0).toBe(true)
        expect(comesAfter(exchangedOnly.flat(), found.flat())).toBe(false)
      }
    }),
    { seed: 20261126, numRuns: 100 },
  )
}, 60_000)

const named = (plan: Plan, lessons: readonly Lesson[]) => plan.map((session) => session.map((lesson) => lessons[lesson]?.id ?? ''))

function comesAfter(one: readonly number[], other: readonly number[]): boolean {
  const different = one.findIndex((lesson, place) => lesson !== other[place])
  return different >= 0 && (one[different] ?? 0) > (other[different] ?? 0)
}
