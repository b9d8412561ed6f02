import { type Cmi5Launch, type Cmi5Verb, cmi5Statement, passes } from '../../../../training/packages/cmi5-statement.ts'
import type { LessonResult } from '../../../../training/packages/result.ts'
import { askedOf, type Cmi5Address, openEndpoint } from './cmi5-endpoint.ts'
import { kept, type OfficeSystem, recorded, refused, type Told } from './office-system.ts'

/** What we keep with the system for a learner's registration, so that a second session says nothing twice. */
interface Memory {
  completed?: boolean
  passed?: boolean
  text?: string
}

/**
 * A lesson that a cmi5 system has launched. A session says `completed` once, and `passed` or `failed` once: a failure is
 * held back until the learner closes the lesson, so that another try in the same session can pass. What could not be sent is sent
 * before the next thing. `now` in UTC. Source: cmi5 1.0, sections 7 to 11.
 */
export function cmi5System(address: Cmi5Address, now: () => string, ask: typeof fetch): OfficeSystem {
  let memory: Memory = {}
  let failed: LessonResult | undefined
  let finished = false
  let token: string | undefined
  let opened: { launch: Cmi5Launch; endpoint: ReturnType<typeof openEndpoint> } | undefined
  let unsent: readonly Record<string, unknown>[] = []

  const quiet = () => opened?.launch.data.launchMode !== 'Normal'
  const say = (verb: Cmi5Verb, result?: Partial<LessonResult>) => {
    if (opened) unsent = [...unsent, cmi5Statement(verb, opened.launch, now(), result)]
  }
  /** What fails stays. What is on its way is sent again with what follows: its id is the same, so it counts once. */
  const send = async (): Promise<Told> => {
    if (!opened) return refused('the lesson was not opened by a training system')
    const sent = unsent
    if (sent.length === 0) return kept
    const failure = await opened.endpoint.sendStatements(sent)
    if (failure !== undefined) return refused(failure)
    unsent = unsent.filter((it) => !sent.includes(it))
    return recorded
  }
  const remember = async (more: Memory): Promise<Told> => {
    memory = { ...memory, ...more }
    const failure = await opened?.endpoint.writeState(memory)
    return failure === undefined ? recorded : refused(failure)
  }

  return {
    async start() {
      if (opened) return send()
      // The token is given once: a second try of the start goes on with it.
      if (token === undefined) {
        const answer = await askedOf(address, ask)
        if ('failure' in answer) return refused(answer.failure)
        token = answer.token
      }
      const endpoint = openEndpoint(address, token, ask)
      const launch = await endpoint.readLaunch()
      if ('failure' in launch) return refused(launch.failure)
      opened = { launch: launch.found, endpoint }
      memory = await endpoint.readState()
      say('initialized')
      return send()
    },
    async report(result) {
      if (finished) return refused('the lesson was closed')
      if (quiet()) return send()
      const passed = opened && passes(result, opened.launch.data)
      const fresh = { completed: result.completed && !memory.completed, passed: passed === true && !memory.passed }
      if (fresh.completed) say('completed', result)
      if (fresh.passed) say('passed', result)
      failed = passed === false && !memory.passed ? result : undefined
      // Set before it is sent: a second report must not say it again while the first waits.
      memory = { ...memory, ...(fresh.completed ? { completed: true } : {}), ...(fresh.passed ? { passed: true } : {}) }
      const told = await send()
      if (told.told === 'refused') return told
      // The result is with the system. Without our note a later session says it again, and the system takes it once.
      if (fresh.completed || fresh.passed) await remember({})
      return told.told === 'kept' && !failed ? kept : { ...recorded, passed }
    },
    async keep(text) {
      return !opened || finished || quiet() ? kept : remember({ text })
    },
    kept: () => memory.text ?? '',
    async finish(durationS) {
      if (finished) return send()
      finished = true
      if (failed) say('failed', failed)
      say('terminated', { durationS })
      return send()
    },
    returnAddress: () => opened?.launch.data.returnURL,
  }
}
