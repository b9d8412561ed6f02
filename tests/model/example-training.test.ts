import { describe, expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { askedLessons } from '../../src/model/asked-lessons.ts'
import { graphOf } from '../../src/model/graph.ts'
import { plannedLesson } from '../../src/model/planned-lesson.ts'
import { sessionsOf } from '../../src/training/sessions.ts'

const { machines } = loadMachine(diskFolder('example-machine', ''), diskFolder('content', 'content/'))

describe.each(machines.map((machine) => ({ machine, serial: machine.unit.serial })))('the training of $serial', ({ machine }) => {
  const graph = graphOf(machine)
  const lessons = graph.pagesIn('lessons')

  const plans = new Map(machine.training.roles.map(({ id }) => [id, made(id)]))
  const planOf = (role: string) => plans.get(role) ?? []
  const daysOf = (role: string) => planOf(role).at(-1)?.day ?? 0

  function made(role: string) {
    const plan = sessionsOf(
      askedLessons(machine, graph, role).map(({ lesson }) => plannedLesson(lesson)),
      machine.training.sessions ?? { minutes: 90 },
    )
    if (!('sessions' in plan)) throw new Error(`${role} cannot be planned: ${JSON.stringify(plan)}`)
    return plan.sessions
  }

  test('there are thirty lessons and more, each with questions that explain every answer', () => {
    expect(lessons.length).toBeGreaterThanOrEqual(30)
    for (const { name, frontmatter } of lessons) {
      const { questions = [], passPercent } = frontmatter
      expect(questions.length, name).toBeGreaterThanOrEqual(4)
      expect(passPercent, name).toBeDefined()
      for (const { answers } of questions) expect(answers.map(({ because }) => because ?? '').includes(''), name).toBe(false)
    }
  })

  test('every lesson is in a plan, and a lesson for hands is signed off', () => {
    const planned = new Set(machine.training.roles.flatMap(({ id }) => planOf(id).flatMap((session) => session.lessons)))
    expect(lessons.map(({ name }) => name).filter((name) => !planned.has(name))).toEqual([])
    const unsigned = lessons.filter(({ frontmatter: { mode, signOff } }) => (mode === 'practise' || mode === 'assess') && !signOff)
    expect(unsigned.map(({ name }) => name)).toEqual([])
  })

  test('five sequences and more hold the first week of an operator and the first month of a technician', () => {
    expect(machine.training.sequences.length).toBeGreaterThanOrEqual(5)
    expect(daysOf('operator')).toBeLessThanOrEqual(5)
    expect(daysOf('maintenance')).toBeLessThanOrEqual(20)
    expect(planOf('operator')[0]?.lessons[0]).toBe('machine-tour')
    expect(planOf('trainer').at(-1)?.lessons).toContain('teach-at-the-machine')
  })
})
