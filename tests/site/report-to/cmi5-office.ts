import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { cmi5Problems } from '../../../src/training/cmi5.ts'
import { listen } from '../../browser/serve.ts'

export interface Cmi5OfficeOptions {
  launchMode?: 'Normal' | 'Browse' | 'Review'
  masteryScore?: number
  returnURL?: string
  lifetimeMs?: number
}

/** A statement as far as it is judged. Every field but the verb may be missing. */
interface Statement {
  id?: string
  session?: string
  verb: { id: string }
  actor?: unknown
  object?: { id?: string }
  result?: { success?: boolean; completion?: boolean; duration?: string; score?: { scaled: number } }
  context?: {
    registration?: string
    contextActivities?: Record<'grouping' | 'category', { id: string }[] | undefined>
    extensions?: Record<string, unknown>
  }
  timestamp?: string
}

export interface Cmi5Office {
  /** The query with which it opens a lesson; a new session each time, of the same registration. */
  launch(session: string): string
  /** Short verbs of all statements in their order, `launched` by the office itself. */
  verbs(): string[]
  statements: readonly Statement[]
  requests: readonly string[]
  /** While set, every request to the endpoint is answered with this. */
  setAnswer(status: number | undefined): void
  close(): Promise<void>
}

export const cmi5Actor = { objectType: 'Agent', account: { homePage: 'https://office.example', name: 'P-0042' } }
const registration = '6f7a2a3e-6a3c-4ec7-9d5d-1d6c3c6a1a10'

/**
 * A training system that speaks cmi5, as far as a lesson sees it, on 127.0.0.1 for a bounded time. It refuses what the
 * rules of cmi5 1.0 (8.2, 9.3, 9.5, 9.6) forbid, whatever a real one would do.
 */
export async function startCmi5Office({
  launchMode = 'Normal',
  masteryScore,
  returnURL,
  lifetimeMs = 60_000,
}: Cmi5OfficeOptions = {}): Promise<Cmi5Office> {
  const statements: Statement[] = []
  const requests: string[] = []
  const states = new Map<string, string>()
  let session = ''
  let isTokenGiven = false
  let answer: number | undefined

  const launchData = () =>
    JSON.stringify({
      contextTemplate: {
        contextActivities: { grouping: [{ id: 'urn:publisher:lesson' }] },
        extensions: { 'https://w3id.org/xapi/cmi5/context/extensions/sessionid': session },
      },
      launchMode,
      moveOn: 'CompletedAndPassed',
      masteryScore,
      returnURL,
    })

  const reply = (path: string, query: URLSearchParams, request: IncomingMessage, body: string): [number, string] => {
    if (path === '/token') {
      if (request.method !== 'POST') return [405, '']
      if (isTokenGiven) return [200, '{"error-code":"1","error-text":"The token was given already."}']
      isTokenGiven = true
      return [200, '{"auth-token":"c2VjcmV0"}']
    }
    if (answer !== undefined) return [answer, 'out of order']
    if (request.headers.authorization !== 'Basic c2VjcmV0') return [401, 'no token']
    if (request.headers['x-experience-api-version'] !== '1.0.3') return [400, 'no version']
    if (path === '/xapi/agents/profile') return [404, '']
    if (path === '/xapi/activities/state') {
      const id = query.get('stateId') ?? ''
      if (query.get('registration') !== registration || query.get('agent') !== JSON.stringify(cmi5Actor)) return [400, 'another learner']
      if (id === 'LMS.LaunchData') return request.method === 'GET' ? [200, launchData()] : [403, '']
      if (request.method === 'GET') return states.has(id) ? [200, states.get(id) ?? ''] : [404, '']
      states.set(id, body)
      return [204, '']
    }
    if (path !== '/xapi/statements' || request.method !== 'POST') return [404, '']
    const given: Statement[] = [JSON.parse(body)].flat()
    for (const statement of given) {
      const known = statements.find(({ id }) => id === statement.id)
      if (known) {
        if (JSON.stringify(known) !== JSON.stringify(statement)) return [409, 'another statement has this id']
        continue
      }
      const fault = faultOf(statement, statements, session, { launchMode, masteryScore })
      if (fault !== undefined) return [400, fault]
      statements.push(statement)
    }
    return [200, JSON.stringify(given.map(({ id }) => id))]
  }

  const server = createServer((request: IncomingMessage, response: ServerResponse) => {
    const chunks: Buffer[] = []
    request.on('data', (chunk: Buffer) => chunks.push(chunk))
    request.on('end', () => {
      const { pathname, searchParams } = new URL(request.url ?? '/', 'http://127.0.0.1')
      const cors = { 'access-control-allow-origin': '*', 'access-control-allow-headers': '*, authorization', 'access-control-allow-methods': '*' }
      if (request.method === 'OPTIONS') {
        response.writeHead(204, cors).end()
        return
      }
      requests.push(`${request.method} ${pathname}`)
      const [status, text] = reply(pathname, searchParams, request, Buffer.concat(chunks).toString())
      response.writeHead(status, { ...cors, 'content-type': 'application/json' }).end(text)
    })
  })
  const { url: base, close } = await listen(server, lifetimeMs)

  return {
    launch(name) {
      session = name
      isTokenGiven = false
      statements.push({ id: `launched-${name}`, verb: { id: 'http://adlnet.gov/expapi/verbs/launched' }, session: name })
      return `?${new URLSearchParams({
        endpoint: `${base}/xapi`,
        fetch: `${base}/token?k=${name}`,
        actor: JSON.stringify(cmi5Actor),
        registration,
        activityId: 'urn:office:lesson-7',
      })}`
    },
    verbs: () => statements.map(shortVerb),
    statements,
    requests,
    setAnswer(status) {
      answer = status
    },
    close,
  }
}

const shortVerb = ({ verb }: Statement) => verb.id.replace('http://adlnet.gov/expapi/verbs/', '')

const cmi5Rules = 'https://w3id.org/xapi/cmi5/context'

function faultOf(
  statement: Statement,
  before: readonly Statement[],
  session: string,
  launch: { launchMode: string; masteryScore: number | undefined },
): string | undefined {
  const [problem] = cmi5Problems(statement, launch.masteryScore === undefined ? {} : { masteryScore: launch.masteryScore })
  if (problem) return `${problem.path}: ${problem.message}`
  const verb = shortVerb(statement)
  const { result, context, actor, object, timestamp } = statement
  if (JSON.stringify(actor) !== JSON.stringify(cmi5Actor)) return 'another actor'
  if (object?.id !== 'urn:office:lesson-7') return 'another activity'
  if (!/^[\d-]{10}T[\d:.]+Z$/.test(timestamp ?? '')) return 'no time in UTC'
  if (context?.registration !== registration) return 'another registration'
  if (context.extensions?.[`${cmi5Rules}/extensions/sessionid`] !== session) return 'another session'
  if (context.contextActivities?.grouping?.[0]?.id !== 'urn:publisher:lesson') return 'the template was changed'
  const categories = (context.contextActivities.category ?? []).map(({ id }) => id)
  if (!categories.includes(`${cmi5Rules}/categories/cmi5`)) return '9.6.2.1: no cmi5 category'
  const isJudged = result?.success !== undefined || result?.completion !== undefined
  if (categories.includes(`${cmi5Rules}/categories/moveon`) !== isJudged) return '9.6.2.2: moveon category'
  if (['completed', 'passed', 'failed', 'terminated'].includes(verb) && !/^PT[\d.]+S$/.test(result?.duration ?? '')) return '9.5.4: no duration'
  if (result?.score && verb !== 'passed' && verb !== 'failed') return '9.5.1: a score'
  if ((verb === 'passed' && result?.success !== true) || (verb === 'failed' && result?.success !== false)) return '9.5.2: success'
  if (launch.masteryScore !== undefined && result?.score) {
    if (verb === 'passed' && result.score.scaled < launch.masteryScore) return '9.3.4: passed below the mastery score'
    if (verb === 'failed' && result.score.scaled >= launch.masteryScore) return '9.3.5: failed from the mastery score on'
    if (context.extensions[`${cmi5Rules}/extensions/masteryscore`] !== launch.masteryScore) return '9.6.3.2: no mastery score'
  }
  return orderFault(verb, before, session, launch.launchMode)
}

function orderFault(verb: string, before: readonly Statement[], session: string, launchMode: string): string | undefined {
  const all = before.map(shortVerb)
  const here = all.slice(before.findIndex((it) => it.session === session) + 1)
  if (here.includes(verb)) return `9.3: ${verb} twice in a session`
  if ((verb === 'initialized') !== (here.length === 0)) return '9.3: initialized is not first'
  if (here.includes('terminated')) return '9.3: after terminated'
  if (launchMode !== 'Normal' && verb !== 'initialized' && verb !== 'terminated') return '10: said in browse or review'
  if ((verb === 'passed' && here.includes('failed')) || (verb === 'failed' && here.includes('passed'))) return '9.3: passed and failed in a session'
  if ((verb === 'completed' || verb === 'passed') && all.includes(verb)) return `9.3: ${verb} twice in a registration`
  return verb === 'failed' && all.includes('passed') ? '9.3: failed after passed' : undefined
}
