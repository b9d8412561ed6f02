import { afterEach, describe, expect, test } from 'vitest'
import { cmi5System } from '../../../src/site/scripts/training/report-to/cmi5.ts'
import { cmi5Address } from '../../../src/site/scripts/training/report-to/cmi5-endpoint.ts'
import type { OfficeSystem } from '../../../src/site/scripts/training/report-to/office-system.ts'
import { type Cmi5Office, type Cmi5OfficeOptions, startCmi5Office } from './cmi5-office.ts'

let office: Cmi5Office
afterEach(() => office?.close())

const open = async (options: Cmi5OfficeOptions = {}) => {
  office = await startCmi5Office(options)
}
const passed = { completed: true, passed: true, score: { right: 4, of: 5 }, durationS: 90 }
const failed = { completed: true, passed: false, score: { right: 1, of: 5 }, durationS: 60 }

/** A session: opened, used, closed. Every answer of the system is taken in. */
async function session(name: string, use: (system: OfficeSystem) => Promise<unknown>): Promise<unknown[]> {
  const address = cmi5Address(office.launch(name))
  if (!address) throw new Error('the launch was not understood')
  const system = cmi5System(address, () => '2026-11-26T07:00:00.000Z', fetch)
  return [await system.start(), await use(system), await system.finish(125.5)]
}

describe('a lesson launched by a cmi5 system', () => {
  test('says launched, initialized, completed, passed, terminated in this order', async () => {
    await open({ masteryScore: 0.8 })
    const told = await session('a', (system) => system.report(passed))
    expect(told).toEqual([{ told: 'recorded' }, { told: 'recorded', passed: true }, { told: 'recorded' }])
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
    const [, , completion, pass, end] = office.statements
    expect(completion?.result).toEqual({ completion: true, duration: 'PT90S' })
    expect(pass?.result).toEqual({ success: true, score: { scaled: 0.8, raw: 4, min: 0, max: 5 }, duration: 'PT90S' })
    expect(end?.result).toEqual({ duration: 'PT125.5S' })
  })

  test('asks for the token once and reads what the rules ask for', async () => {
    await open()
    await session('a', (system) => system.report(passed))
    expect(office.requests.filter((it) => it.endsWith('/token'))).toEqual(['POST /token'])
    expect(office.requests.slice(1, 4)).toEqual(['GET /xapi/activities/state', 'GET /xapi/agents/profile', 'GET /xapi/activities/state'])
  })

  test('holds a failure back: another try in the session can pass', async () => {
    await open({ masteryScore: 0.8 })
    const told = await session('a', async (system) => [await system.report(failed), await system.report(passed)])
    expect(told[1]).toEqual([
      { told: 'recorded', passed: false },
      { told: 'recorded', passed: true },
    ])
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
  })

  test('says failed when it is closed, and passes in a later session without saying completed again', async () => {
    await open({ masteryScore: 0.8 })
    await session('a', (system) => system.report(failed))
    await session('b', (system) => system.report(passed))
    await session('c', (system) => system.report(failed))
    expect(office.verbs()).toEqual([
      ...['launched', 'initialized', 'completed', 'failed', 'terminated'],
      ...['launched', 'initialized', 'passed', 'terminated'],
      ...['launched', 'initialized', 'terminated'],
    ])
  })

  test.each([
    [0.9, false],
    [0.8, true],
    [0.75, true],
  ])('the mastery score %d of the system counts before the mark of the lesson', async (masteryScore, isPassed) => {
    await open({ masteryScore })
    const [, told] = await session('a', (system) => system.report(passed))
    expect(told).toEqual({ told: 'recorded', passed: isPassed })
    expect(office.verbs()).toContain(isPassed ? 'passed' : 'failed')
  })

  test('a lesson that asks nothing is completed', async () => {
    await open()
    const [, told] = await session('a', (system) => system.report({ completed: true, durationS: 5 }))
    expect(told).toEqual({ told: 'recorded', passed: undefined })
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'terminated'])
  })

  test.each(['Browse', 'Review'] as const)('in %s it says nothing of the result', async (launchMode) => {
    await open({ launchMode })
    const [, told] = await session('a', (system) => system.report(passed))
    expect(told).toEqual({ told: 'kept' })
    expect(office.verbs()).toEqual(['launched', 'initialized', 'terminated'])
  })

  test('what the system did not take is told and sent again with the next thing, in order', async () => {
    await open()
    const [, told] = await session('a', async (system) => {
      office.setAnswer(503)
      const refused = await system.report(passed)
      office.setAnswer(undefined)
      return [refused, await system.report(passed)]
    })
    expect(told).toEqual([
      { told: 'refused', reason: '503 out of order' },
      { told: 'recorded', passed: true },
    ])
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
  })

  test('a start that failed half-way is taken up again', async () => {
    await open()
    const address = cmi5Address(office.launch('a'))
    if (!address) throw new Error('the launch was not understood')
    const system = cmi5System(address, () => '2026-11-26T07:00:00.000Z', fetch)
    office.setAnswer(503)
    expect(await system.start()).toEqual({ told: 'refused', reason: 'LMS.LaunchData: 503 out of order' })
    office.setAnswer(undefined)
    expect(await system.start()).toEqual({ told: 'recorded' })
    await system.report(passed)
    await system.finish(1)
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
    expect(office.requests.filter((it) => it.endsWith('/token'))).toEqual(['POST /token'])
  })

  test('a lesson that is closed while its result is on the way says each thing once', async () => {
    await open()
    await session('a', async (system) => {
      void system.report(passed)
      return system.finish(3)
    })
    expect(office.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
  })

  test('keeps where the learner is', async () => {
    await open()
    await session('a', (system) => system.keep('lessons/stop.html'))
    const read: string[] = []
    await session('b', async (system) => read.push(system.kept()))
    expect(read).toEqual(['lessons/stop.html'])
  })

  test('a token that was given already, and a system that is gone, are told', async () => {
    await open()
    const address = cmi5Address(office.launch('a'))
    if (!address) throw new Error('the launch was not understood')
    const system = () => cmi5System(address, () => '2026-11-26T07:00:00.000Z', fetch)
    await system().start()
    expect(await system().start()).toEqual({ told: 'refused', reason: expect.stringContaining('The token was given already.') })
    await office.close()
    expect(await system().start()).toEqual({ told: 'refused', reason: 'fetch failed' })
  })
})

test.each([
  ['no query', ''],
  ['no actor', '?endpoint=https://a.example&fetch=https://a.example/t&registration=r&activityId=urn:x'],
  ['an actor that is no JSON', '?endpoint=https://a.example&fetch=https://a.example/t&registration=r&activityId=urn:x&actor=P-1'],
  ['no token address', '?endpoint=https://a.example&registration=r&activityId=urn:x&actor={}'],
])('%s is no launch: nothing is asked of anyone', (_, query) => expect(cmi5Address(query)).toBeUndefined())
