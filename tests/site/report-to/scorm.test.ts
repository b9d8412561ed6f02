import { Scorm12API, Scorm2004API } from 'scorm-again'
import { describe, expect, test } from 'vitest'
import { findApi } from '../../../src/site/scripts/training/report-to/find-api.ts'
import { type Scorm12Api, scorm12System } from '../../../src/site/scripts/training/report-to/scorm-12.ts'
import { type Scorm2004Api, scorm2004System } from '../../../src/site/scripts/training/report-to/scorm-2004.ts'

const passed = { completed: true, passed: true, score: { right: 4, of: 5 }, durationS: 90 }
const failed = { completed: true, passed: false, score: { right: 2, of: 3 }, durationS: 60 }

/** A runtime that takes the calls of a lesson, as a mock of a training system. */
const runtime12 = (): Scorm12Api => new Scorm12API({ autocommit: false, logLevel: 5 }) as unknown as Scorm12Api
const runtime2004 = (): Scorm2004Api => new Scorm2004API({ autocommit: false, logLevel: 5 }) as unknown as Scorm2004Api

describe('SCORM 1.2', () => {
  const read = (api: Scorm12Api) =>
    Object.fromEntries(['lesson_status', 'score.raw', 'score.min', 'score.max'].map((name) => [name, api.LMSGetValue(`cmi.core.${name}`)]))

  test('a lesson that was opened is incomplete, and passed with its score when the questions are', async () => {
    const api = runtime12()
    const system = scorm12System(api)
    expect(await system.start()).toEqual({ told: 'recorded' })
    expect(api.LMSGetValue('cmi.core.lesson_status')).toBe('incomplete')
    expect(await system.report(passed)).toEqual({ told: 'recorded', passed: true })
    expect(read(api)).toEqual({ lesson_status: 'passed', 'score.raw': '80', 'score.min': '0', 'score.max': '100' })
    expect(await system.finish(3725)).toEqual({ told: 'recorded' })
    expect(Reflect.get(api, 'isTerminated')?.call(api)).toBe(true)
  })

  test('a failure is told, another try passes, and a later failure takes nothing away', async () => {
    const api = runtime12()
    const system = scorm12System(api)
    await system.start()
    expect(await system.report(failed)).toEqual({ told: 'recorded', passed: false })
    expect(read(api)).toMatchObject({ lesson_status: 'failed', 'score.raw': '66.66' })
    await system.report(passed)
    expect(await system.report(failed)).toEqual({ told: 'kept' })
    expect(read(api)).toMatchObject({ lesson_status: 'passed', 'score.raw': '80' })
  })

  test('a lesson that asks nothing is completed', async () => {
    const api = runtime12()
    const system = scorm12System(api)
    await system.start()
    expect(await system.report({ completed: true, durationS: 1 })).toEqual({ told: 'recorded', passed: undefined })
    expect(read(api)).toMatchObject({ lesson_status: 'completed', 'score.raw': '' })
  })

  test('keeps a text as far as the rules promise, and refuses a longer one', async () => {
    const api = runtime12()
    const system = scorm12System(api)
    await system.start()
    expect(await system.keep('x'.repeat(4096))).toEqual({ told: 'recorded' })
    expect(system.kept()).toHaveLength(4096)
    expect(await system.keep('x'.repeat(4097))).toEqual({ told: 'refused', reason: 'cmi.suspend_data: longer than 4096 characters' })
  })

  test('what the runtime refuses is told with its code', async () => {
    const api = runtime12()
    const system = scorm12System(api)
    expect(await system.report(passed)).toEqual({ told: 'refused', reason: expect.stringMatching(/^cmi\.core\.score\.min: 301 /) })
    await system.start()
    expect(await system.report({ ...passed, score: { right: 6, of: 5 } })).toEqual({
      told: 'refused',
      reason: expect.stringMatching(/^cmi\.core\.score\.raw: 40[57] /),
    })
    await system.finish(1)
    expect(await system.report(passed)).toEqual({ told: 'refused', reason: 'the lesson was closed' })
  })

  test.each([
    ['cmi.core.score.raw', '101'],
    ['cmi.core.session_time', '25 min'],
    ['cmi.core.student_id', 'P-1'],
  ])('the runtime refuses %s = %s', (name, value) => {
    const api = runtime12()
    api.LMSInitialize('')
    expect(String(api.LMSSetValue(name, value))).toBe('false')
  })
})

describe('SCORM 2004', () => {
  const read = (api: Scorm2004Api) =>
    Object.fromEntries(
      ['completion_status', 'success_status', 'score.scaled', 'score.raw', 'score.max'].map((name) => [name, api.GetValue(`cmi.${name}`)]),
    )

  test('passes with a scaled score', async () => {
    const api = runtime2004()
    const system = scorm2004System(api)
    expect(await system.start()).toEqual({ told: 'recorded' })
    expect(read(api)).toMatchObject({ completion_status: 'incomplete', success_status: 'unknown' })
    expect(await system.report(passed)).toEqual({ told: 'recorded', passed: true })
    expect(read(api)).toEqual({ completion_status: 'completed', success_status: 'passed', 'score.scaled': '0.8', 'score.raw': '4', 'score.max': '5' })
    expect(await system.finish(1500)).toEqual({ told: 'recorded' })
  })

  test('a failure is told, another try passes, and a later failure takes nothing away', async () => {
    const api = runtime2004()
    const system = scorm2004System(api)
    await system.start()
    expect(await system.report(failed)).toEqual({ told: 'recorded', passed: false })
    expect(read(api)).toMatchObject({ success_status: 'failed', 'score.scaled': '0.6666' })
    await system.report(passed)
    expect(await system.report(failed)).toEqual({ told: 'kept' })
    expect(read(api)).toMatchObject({ success_status: 'passed', 'score.scaled': '0.8' })
  })

  test('a lesson that asks nothing is completed and says nothing of success', async () => {
    const api = runtime2004()
    const system = scorm2004System(api)
    await system.start()
    expect(await system.report({ completed: true, durationS: 1 })).toEqual({ told: 'recorded' })
    expect(read(api)).toMatchObject({ completion_status: 'completed', success_status: 'unknown' })
  })

  test('keeps a text as far as the rules promise, and refuses a longer one', async () => {
    const api = runtime2004()
    const system = scorm2004System(api)
    await system.start()
    expect(await system.keep('x'.repeat(64_000))).toEqual({ told: 'recorded' })
    expect(await system.keep('x'.repeat(64_001))).toEqual({ told: 'refused', reason: 'cmi.suspend_data: longer than 64000 characters' })
  })

  test('what the runtime refuses is told with its code', async () => {
    const api = runtime2004()
    const system = scorm2004System(api)
    await system.start()
    expect(await system.report({ ...passed, score: { right: 6, of: 5 } })).toEqual({
      told: 'refused',
      reason: expect.stringMatching(/^cmi\.score\.\w+: 40[67] /),
    })
  })
})

describe('the object of the system is found', () => {
  const api = { LMSInitialize: () => 'true' }
  type Frame = { parent?: Frame; opener?: Frame; API?: unknown; top?: Frame }
  const frame = (own: Frame, parent?: Frame): Frame => {
    const it: Frame = own
    it.parent = parent ?? it
    it.top = parent?.top ?? it
    return it
  }
  const find = (start: Frame) => findApi<typeof api>('API', 'LMSInitialize', start as unknown as Window)

  test.each([
    ['in the frame around', frame({}, frame({ API: api }))],
    ['three frames up', frame({}, frame({}, frame({}, frame({ API: api }))))],
    ['in the window that opened this one', frame({ opener: frame({ API: api }) })],
    ['in a frame around the window that opened this one', frame({ opener: frame({}, frame({ API: api })) })],
    ['by the window that opened the frames', frame({}, frame({ opener: frame({ API: api }) }))],
    ['above a frame that bears its name by chance', frame({}, frame({ API: {} }, frame({ API: api })))],
  ])('%s', (_, start) => expect(find(start)).toBe(api))

  test('nowhere: alone, and behind a window of another origin', () => {
    expect(find(frame({}))).toBeUndefined()
    const strange: Frame = new Proxy(frame({ API: api }), {
      get: (_, name) => {
        if (name === 'parent' || name === 'top') return strange
        throw new Error('another origin')
      },
    })
    expect(find(frame({}, strange))).toBeUndefined()
  })
})
