import { expect, test } from 'vitest'
import type { Lesson } from '../../src/training/lesson.ts'
import { orderOf } from '../../src/training/order.ts'

/** Lessons from `A: B C, !D`: A needs B and C, and D signed off. */
function lessonsFrom(lines: readonly string[]): Lesson[] {
  return lines.map((line) => {
    const [id = '', list = ''] = line.split(':')
    const needs = list.split(' ').filter(Boolean)
    return {
      id,
      minutes: 10,
      needs: needs.filter((need) => !need.startsWith('!')),
      needsSignedOff: needs.filter((need) => need.startsWith('!')).map((need) => need.slice(1)),
    }
  })
}

function ordered(...lines: string[]) {
  const result = orderOf(lessonsFrom(lines))
  if ('order' in result) return result.order.join(' ')
  const loops = result.cycles.map((loop) => [loop[0]?.lesson, ...loop.map(({ needs }) => needs)].join(' -> '))
  return { loops, unknown: result.unknown.map(({ lesson, needs }) => `${lesson} needs ${needs}`) }
}

test('lessons in a workable order stay in it', () => {
  expect(ordered('A:', 'B:A', 'C:', 'D:A B')).toBe('A B C D')
  expect(ordered()).toBe('')
})

test('a lesson before its need comes after it, the others keep their places (C14)', () => {
  expect(ordered('C:A', 'B:', 'A:')).toBe('B A C')
})

test('a need that is signed off orders like any other, and counts once where it stands in both lists', () => {
  expect(ordered('C:!A', 'B:', 'A:')).toBe('B A C')
  expect(ordered('C:A !A', 'B:', 'A:')).toBe('B A C')
})

test('loops, with an unknown need; what only needs a loop is in none (C15)', () => {
  expect(ordered('A:C', 'B:A', 'C:B', 'D:D', 'E:A', 'X:nope')).toEqual({ loops: ['A -> C -> B -> A', 'D -> D'], unknown: ['X needs nope'] })
})

test('a knot is told by its shortest loop (C16)', () => {
  expect(ordered('A:B D', 'B:C', 'C:A', 'D:A')).toEqual({ loops: ['A -> D -> A'], unknown: [] })
})

test('of equally short loops the one of the earlier lesson is told', () => {
  expect(ordered('A:B', 'B:C A', 'C:B')).toEqual({ loops: ['A -> B -> A'], unknown: [] })
})

test('an unknown need alone has no loop', () => {
  expect(ordered('A:nope')).toEqual({ loops: [], unknown: ['A needs nope'] })
})

test('a loop says in which list each need stands', () => {
  const [a, b] = lessonsFrom(['A:!B', 'B:A'])
  expect(orderOf([a, b].filter((it) => it !== undefined))).toEqual({
    cycles: [
      [
        { lesson: 'A', needs: 'B', in: 'needsSignedOff' },
        { lesson: 'B', needs: 'A', in: 'needs' },
      ],
    ],
    unknown: [],
  })
})

test('a thousand lessons from the last to the first are ordered at once', () => {
  const lines = Array.from({ length: 1000 }, (_, index) => `L${index}:${index === 999 ? '' : `L${index + 1}`}`)
  expect(ordered(...lines)).toBe(
    lines
      .map((line) => line.split(':')[0])
      .reverse()
      .join(' '),
  )
})
