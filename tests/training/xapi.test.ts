import { describe, expect, test } from 'vitest'
import { cmi5Category, cmi5Problems, moveOnCategory } from '../../src/training/cmi5.ts'
import { statementProblems } from '../../src/training/statement-problems.ts'
import { statementsOf } from '../../src/training/xapi.ts'
import { journalOf, manyRecords } from './records.ts'

const base = 'https://training.invalid/rcw-400'

describe('statements of a journal', () => {
  const journal = journalOf([
    { event: 'named', person: 'P-0042', name: 'Ana Gómez' },
    { event: 'passed', person: 'P-0042', lesson: 'lock-out', revision: 'C', date: '2026-11-25', score: { right: 4, of: 5 } },
    { event: 'signed-off', person: 'P-0042', lesson: 'lock-out', revision: 'C', date: '2026-11-25', by: 'P-0007' },
    { event: 'inspected', procedure: 'LO-1', people: ['P-0042'], by: 'P-0007', date: '2026-11-26' },
  ])

  test('say who did what, with the id of the person as account', () => {
    const ana = { objectType: 'Agent', name: 'Ana Gómez', account: { homePage: base, name: 'P-0042' } }
    const [passed, signed, inspected, ...more] = statementsOf(journal, { base })
    expect(more).toEqual([])
    expect(passed).toMatchObject({
      version: '1.0.3',
      timestamp: '2026-11-25T00:00:00.000Z',
      actor: ana,
      verb: { id: 'http://adlnet.gov/expapi/verbs/passed' },
      object: { objectType: 'Activity', id: `${base}/lessons/lock-out` },
      result: { success: true, score: { scaled: 0.8, raw: 4, min: 0, max: 5 } },
      context: { revision: 'C', extensions: { [`${base}/xapi/entry`]: { seq: 1, hash: journal[1]?.hash } } },
    })
    expect(signed?.context.instructor?.account.name).toBe('P-0007')
    expect(signed?.result).toBeUndefined()
    expect(inspected?.actor.account.name).toBe('P-0007')
    expect(inspected?.context.team?.member).toEqual([ana])
  })

  test('of every kind are valid, and their ids are those of the same journal again', () => {
    const many = journalOf(manyRecords(200))
    const statements = statementsOf(many, { base })
    expect(statements).toHaveLength(many.filter(({ body }) => body.event !== 'named').length)
    expect(statements.flatMap(statementProblems)).toEqual([])
    expect(new Set(statements.map(({ id }) => id)).size).toBe(statements.length)
    expect(statementsOf(many.slice(0, 100), { base }).map(({ id }) => id)).toEqual(
      statements.slice(0, many.slice(0, 100).filter(({ body }) => body.event !== 'named').length).map(({ id }) => id),
    )
    for (const [index, { id }] of statements.slice(0, 5).entries())
      expect(id, String(index)).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })
})

const actor = { account: { homePage: base, name: 'P-1' } }
const object = { id: `${base}/lessons/lock-out` }
const verb = (name: string) => ({ id: `http://adlnet.gov/expapi/verbs/${name}` })
const good = { actor, verb: verb('passed'), object, result: { score: { scaled: 0.85 }, success: true, duration: 'PT25M' } }

// Case C23. Source: xAPI-Data.md, 2.4.
describe('a statement is refused at its path', () => {
  test('and a good one is not', () => {
    expect(statementProblems(good)).toEqual([])
    for (const duration of ['PT25M', 'P1DT2H', 'P2W', 'PT0.5S', 'P1Y2M3D']) expect(statementProblems({ ...good, result: { duration } })).toEqual([])
  })

  test.each<[string, object, string]>([
    ['more than all', { result: { score: { scaled: 1.2 } } }, 'result.score.scaled'],
    ['less than nothing', { result: { score: { scaled: -1.1 } } }, 'result.score.scaled'],
    ['raw above max', { result: { score: { raw: 25, min: 0, max: 20 } } }, 'result.score.raw'],
    ['min at max', { result: { score: { min: 5, max: 5 } } }, 'result.score.min'],
    ['two identifiers', { actor: { ...actor, mbox: 'mailto:a@example.com' } }, 'actor'],
    ['a name alone', { actor: { name: 'Ana' } }, 'actor'],
    ['a group of nobody', { actor: { objectType: 'Group', name: 'Shift 1' } }, 'actor'],
    ['an actor that is an activity', { actor: { objectType: 'Activity' } }, 'actor.objectType'],
    ['a verb in a word', { verb: { id: 'passed' } }, 'verb.id'],
    ['a foreign property', { reason: 'r' }, 'reason'],
    ['a foreign property inside', { object: { ...object, name: 'Lock out' } }, 'object.name'],
    ['an account without a page', { actor: { account: { name: 'P-1' } } }, 'actor.account.homePage'],
    ['minutes in words', { result: { duration: '25 min' } }, 'result.duration'],
    ['an empty duration', { result: { duration: 'PT' } }, 'result.duration'],
    ['no duration behind the T', { result: { duration: 'P1DT' } }, 'result.duration'],
    ['a day without a time', { timestamp: '2026-11-25' }, 'timestamp'],
    ['no object', { object: undefined }, 'object'],
    ['an id that is none', { id: '5e414e2c' }, 'id'],
    ['a revision of a person', { object: actor.account && { objectType: 'Agent', ...actor }, context: { revision: 'C' } }, 'context.revision'],
  ])('%s', (_, change, path) => expect(statementProblems({ ...good, ...change }).map((it) => it.path)).toEqual([path]))
})

// Cases C24 and C25. Source: cmi5 specification, 9.3.4, 9.5 and 9.6.2.
describe('a statement of cmi5', () => {
  const of = (name: string, result: object, categories = [cmi5Category, moveOnCategory]) => ({
    actor,
    verb: verb(name),
    object,
    result,
    context: { contextActivities: { category: categories.map((id) => ({ id })) } },
  })
  const passed = (scaled: number) => of('passed', { score: { scaled }, success: true, duration: 'PT25M' })

  test.each<[string, object, number | undefined, string[]]>([
    ['0.85 of 0.8', passed(0.85), 0.8, []],
    ['0.85 of 0.9', passed(0.85), 0.9, ['result.score.scaled']],
    ['0.8 of 0.8', passed(0.8), 0.8, []],
    ['failed with 0.8 of 0.8', of('failed', { score: { scaled: 0.8 }, success: false, duration: 'PT1M' }), 0.8, ['result.score.scaled']],
    ['failed with 0.7 of 0.8', of('failed', { score: { scaled: 0.7 }, success: false, duration: 'PT1M' }), 0.8, []],
    ['completed with a score', of('completed', { score: { scaled: 1 }, completion: true, duration: 'PT1M' }), undefined, ['result.score']],
    ['success without moveon', of('passed', { success: true, duration: 'PT1M' }, [cmi5Category]), undefined, ['context.contextActivities.category']],
    ['passed without a duration', of('passed', { success: true }), undefined, ['result.duration']],
    ['passed without success', of('passed', { duration: 'PT1M' }, [cmi5Category]), undefined, ['result.success']],
    ['moveon without a result', of('initialized', {}), undefined, ['context.contextActivities.category']],
    ['initialized', of('initialized', {}, [cmi5Category]), undefined, []],
    [
      'no category of cmi5',
      of('completed', { completion: true, duration: 'PT1M' }, [moveOnCategory]),
      undefined,
      ['context.contextActivities.category'],
    ],
    ['another verb', of('mastered', {}), undefined, ['verb.id']],
    ['raw without its range', of('passed', { score: { raw: 4 }, success: true, duration: 'PT1M' }), undefined, ['result.score.raw']],
  ])('%s', (_, statement, masteryScore, paths) => {
    const options = masteryScore === undefined ? {} : { masteryScore }
    expect(cmi5Problems(statement, options).map(({ path }) => path)).toEqual(paths)
  })
})
