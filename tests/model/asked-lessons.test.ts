import { expect, test } from 'vitest'
import { noTraining } from '../../src/load/records.ts'
import { askedLessons } from '../../src/model/asked-lessons.ts'
import type { Graph } from '../../src/model/graph.ts'
import type { Page } from '../../src/model/machine.ts'

const lesson = (name: string, frontmatter: Partial<Page<'lessons'>['frontmatter']> = {}) =>
  ({ name, id: `lessons/${name}`, collection: 'lessons', frontmatter }) as Page<'lessons'>

function asked(lessons: readonly Page<'lessons'>[], training: Partial<typeof noTraining.training>) {
  const graph = {
    pagesIn: () => lessons,
    page: (id: string) => lessons.find((it) => it.id === id),
  } as unknown as Graph
  return askedLessons({ training: { ...noTraining.training, ...training } }, graph, 'operator').map(({ lesson, asking }) => [
    lesson.name,
    asking.because,
  ])
}

test('sequences come first, then skills, then lessons that name the role, then what those need', () => {
  const lessons = [
    lesson('basics'),
    lesson('named', { roles: ['operator'], needs: ['basics'] }),
    lesson('run', { level: 2 }),
    lesson('teach', { level: 4 }),
    lesson('tour'),
    lesson('other', { roles: ['cleaner'] }),
  ]
  const training = {
    roles: [{ id: 'operator', name: 'Operator', needs: { running: 3 } }],
    skills: [{ id: 'running', name: 'Run it', lessons: ['run', 'teach'] }],
    sequences: [
      { id: 'week', name: 'Week', role: 'operator', lessons: ['tour'] },
      { id: 'other', name: 'Other', role: 'cleaner', lessons: ['other'] },
    ],
  }
  expect(asked(lessons, training)).toEqual([
    ['tour', 'sequence'],
    ['run', 'skill'],
    ['named', 'role'],
    ['basics', 'need'],
  ])
})

test('a need of a need is asked for, in the same session or signed off before; a circle ends', () => {
  const lessons = [lesson('a', { roles: ['operator'], needsSignedOff: ['b'] }), lesson('b', { needs: ['c'] }), lesson('c', { needs: ['a'] })]
  expect(asked(lessons, {})).toEqual([
    ['a', 'role'],
    ['b', 'need'],
    ['c', 'need'],
  ])
})

test('a lesson that does not exist is left out', () => {
  expect(asked([], { sequences: [{ id: 'week', name: 'Week', role: 'operator', lessons: ['tour'] }] })).toEqual([])
})
