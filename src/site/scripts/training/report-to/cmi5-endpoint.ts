import type { Cmi5Launch, Cmi5LaunchData } from '../../../../training/packages/cmi5-statement.ts'

/** What stands in the address with which a cmi5 system opens a lesson. Source: cmi5 1.0, section 8.1. */
export interface Cmi5Address {
  endpoint: string
  fetch: string
  actor: Readonly<Record<string, unknown>>
  registration: string
  activityId: string
}

/** Undefined where the lesson was not opened by a cmi5 system: then nothing is ever asked of anyone. */
export function cmi5Address(query: string): Cmi5Address | undefined {
  const given = new URLSearchParams(query)
  const [endpoint, fetch, actor, registration, activityId] = ['endpoint', 'fetch', 'actor', 'registration', 'activityId'].map((name) =>
    given.get(name),
  )
  const agent = asRecord(parsed(actor ?? ''))
  if (!endpoint || !fetch || !agent || !registration || !activityId) return undefined
  return { endpoint: endpoint.endsWith('/') ? endpoint : `${endpoint}/`, fetch, actor: agent, registration, activityId }
}

/** The token for everything that follows; it is given once. Source: cmi5 1.0, section 8.2. */
export async function askedOf(address: Cmi5Address, ask: typeof fetch): Promise<{ token: string } | { failure: string }> {
  const answer = await answerOf(() => ask(address.fetch, { method: 'POST' }))
  if ('failure' in answer) return answer
  const token = asRecord(parsed(answer.text))?.['auth-token']
  return typeof token === 'string' ? { token } : { failure: `no auth-token: ${answer.text.slice(0, 200)}` }
}

const launchData = 'LMS.LaunchData'
const ownState = 'https://w3id.org/xapi/cmi5/fettle-lesson'

export function openEndpoint(address: Cmi5Address, token: string, ask: typeof fetch) {
  const headers = { Authorization: `Basic ${token}`, 'X-Experience-API-Version': '1.0.3' }
  const sent = { ...headers, 'Content-Type': 'application/json' }
  const { endpoint, actor, registration, activityId } = address
  const agent = JSON.stringify(actor)
  const state = (stateId: string) => `${endpoint}activities/state?${new URLSearchParams({ stateId, activityId, agent, registration })}`
  const profile = `${endpoint}agents/profile?${new URLSearchParams({ profileId: 'cmi5LearnerPreferences', agent })}`
  // A page that is being closed still sends what it has begun.
  const kept = { keepalive: true }

  return {
    async readLaunch(): Promise<{ found: Cmi5Launch } | { failure: string }> {
      const answer = await answerOf(() => ask(state(launchData), { headers }))
      if ('failure' in answer) return { failure: `${launchData}: ${answer.failure}` }
      const data = launchDataOf(parsed(answer.text))
      // Section 11 asks to read the preferences; a package is in one language and has no sound, so they change nothing.
      await answerOf(() => ask(profile, { headers }))
      return data ? { found: { actor, registration, activityId, data } } : { failure: `${launchData} has no contextTemplate and launchMode` }
    },
    /**
     * Sends all in one request, in their order, since a page that is being closed has no time for a second one. Says why
     * they were not taken; undefined where they were. One that is there already was taken before.
     */
    async sendStatements(statements: readonly Record<string, unknown>[]): Promise<string | undefined> {
      const post = (body: unknown) =>
        answerOf(() => ask(`${endpoint}statements`, { method: 'POST', headers: sent, body: JSON.stringify(body), ...kept }))
      const answer = await post(statements)
      if ('text' in answer) return undefined
      if (answer.status !== 409) return answer.failure
      for (const statement of statements) {
        const single = await post(statement)
        if ('failure' in single && single.status !== 409) return single.failure
      }
      return undefined
    },
    async readState(): Promise<Record<string, unknown>> {
      const answer = await answerOf(() => ask(state(ownState), { headers }))
      return 'text' in answer ? (asRecord(parsed(answer.text)) ?? {}) : {}
    },
    async writeState(value: object): Promise<string | undefined> {
      const answer = await answerOf(() => ask(state(ownState), { method: 'PUT', headers: sent, body: JSON.stringify(value), ...kept }))
      return 'failure' in answer ? answer.failure : undefined
    },
  }
}

type Answer = { text: string } | { failure: string; status?: number }

/** Never throws: a network that is gone is an answer too. */
async function answerOf(request: () => Promise<Response>): Promise<Answer> {
  try {
    const response = await request()
    const text = await response.text()
    return response.ok ? { text } : { failure: `${response.status} ${text.slice(0, 200)}`.trim(), status: response.status }
  } catch (error) {
    return { failure: error instanceof Error ? error.message : String(error) }
  }
}

function launchDataOf(value: unknown): Cmi5LaunchData | undefined {
  const data = asRecord(value)
  const contextTemplate = asRecord(data?.contextTemplate)
  if (!data || !contextTemplate || typeof data.launchMode !== 'string') return undefined
  const { launchMode, masteryScore, returnURL } = data
  return {
    contextTemplate,
    launchMode,
    ...(typeof masteryScore === 'number' ? { masteryScore } : {}),
    ...(typeof returnURL === 'string' ? { returnURL } : {}),
  }
}

function asRecord(value: unknown): Record<string, unknown> | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : undefined
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined // the caller says what is missing
  }
}
