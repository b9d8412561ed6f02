import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { learningPath, type PathLesson } from '../../src/training/learning-path.ts'

const lesson = (id: string, needs: readonly string[] = [], isDone = false, needsSignedOff: readonly string[] = []): PathLesson => ({
  id,
  needs,
  needsSignedOff,
  isDone,
})
const states = (lessons: readonly PathLesson[]) => Object.fromEntries(learningPath(lessons).steps.map(({ id, state }) => [id, state]))

test('what is done, open and waits, and why the next one comes next', () => {
  const lessons = [lesson('look', [], true), lesson('lock', ['look']), lesson('lamps', ['lock', 'look']), lesson('clean', [], false, ['lock'])]
  expect(states(lessons)).toEqual({ look: 'done', lock: 'open', lamps: 'waits', clean: 'waits' })
  expect(learningPath(lessons).next).toEqual({ id: 'lock', after: ['look'], neededBy: ['lamps', 'clean'] })
  expect(learningPath(lessons).steps[2]?.missing).toEqual(['lock'])
})

test('nothing is next when all is done, and a need that is not on the path holds nothing up', () => {
  expect(learningPath([lesson('look', [], true)]).next).toBeUndefined()
  expect(learningPath([]).steps).toEqual([])
  expect(learningPath([lesson('look', ['elsewhere'])]).next).toEqual({ id: 'look', after: [], neededBy: [] })
})

test('what has lapsed is taken again, though what needs it is done', () => {
  const lessons = [lesson('look'), lesson('lock', ['look'], true)]
  expect(states(lessons)).toEqual({ look: 'open', lock: 'done' })
  expect(learningPath(lessons).next).toEqual({ id: 'look', after: [], neededBy: [] })
})

describe('laws', () => {
  // Needs go back alone, so there is no loop.
  const path = fc
    .array(fc.record({ isDone: fc.boolean(), back: fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 3 }) }), { maxLength: 12 })
    .map((all) =>
      all.map(({ isDone, back }, index) =>
        lesson(
          String(index),
          back.filter((it) => it <= index).map((it) => String(index - it)),
          isDone,
        ),
      ),
    )

  test('there is a next lesson as long as one is not done, and whoever takes them in turn gets through', () => {
    fc.assert(
      fc.property(path, (lessons) => {
        let left = lessons
        for (let turn = 0; turn <= lessons.length; turn++) {
          const { next, steps } = learningPath(left)
          expect(next === undefined).toBe(left.every(({ isDone }) => isDone))
          if (!next) return
          expect(steps.find(({ id }) => id === next.id)?.missing).toEqual([])
          left = left.map((it) => (it.id === next.id ? { ...it, isDone: true } : it))
        }
        throw new Error('the path has no end')
      }),
    )
  })
})
