import { nameUuid } from './name-uuid.ts'
import { isoDuration, type LessonResult, scaledScore } from './result.ts'

/** What the office system says when it launches a lesson. Source: cmi5 1.0, sections 8.1 and 10. */
export interface Cmi5Launch {
  actor: Readonly<Record<string, unknown>>
  registration: string
  activityId: string
  data: Cmi5LaunchData
}

export interface Cmi5LaunchData {
  contextTemplate: Readonly<Record<string, unknown>>
  launchMode: string
  /** 0 to 1; it counts before the pass mark of the lesson. */
  masteryScore?: number
  /** Where the learner goes afterwards. */
  returnURL?: string
}

export type Cmi5Verb = 'initialized' | 'completed' | 'passed' | 'failed' | 'terminated'

const categories = 'https://w3id.org/xapi/cmi5/context/categories'
const extensions = 'https://w3id.org/xapi/cmi5/context/extensions'

/**
 * A statement of cmi5. Its id follows from the session and the verb, so that one that is sent again changes nothing:
 * a verb is used once in a session. `timestamp` in UTC. Source: cmi5 1.0, sections 9.1 to 9.7.
 */
export function cmi5Statement(verb: Cmi5Verb, launch: Cmi5Launch, timestamp: string, result: Partial<LessonResult> = {}): Record<string, unknown> {
  const { contextTemplate, masteryScore } = launch.data
  const judged = verb === 'passed' || verb === 'failed'
  const movesOn = judged || verb === 'completed'
  const own = [`${categories}/cmi5`, ...(movesOn ? [`${categories}/moveon`] : [])].map((id) => ({ id }))
  const activities = recordOf(contextTemplate.contextActivities)
  const given = Array.isArray(activities.category) ? activities.category : []
  const session = recordOf(contextTemplate.extensions)
  return {
    id: nameUuid(JSON.stringify([launch.registration, launch.activityId, session[`${extensions}/sessionid`] ?? '', verb])),
    actor: launch.actor,
    verb: { id: `http://adlnet.gov/expapi/verbs/${verb}`, display: { en: verb } },
    object: { objectType: 'Activity', id: launch.activityId },
    ...(verb === 'initialized' ? {} : { result: resultOf(verb, result) }),
    context: {
      ...contextTemplate,
      registration: launch.registration,
      contextActivities: { ...activities, category: [...given, ...own] },
      extensions: { ...session, ...(judged && masteryScore !== undefined ? { [`${extensions}/masteryscore`]: masteryScore } : {}) },
    },
    timestamp,
  }
}

/** Whether a result passes: by the mark that the office system gives, else by that of the lesson; undefined where nothing was judged. */
export function passes({ passed, score }: LessonResult, { masteryScore }: Cmi5LaunchData): boolean | undefined {
  return score && masteryScore !== undefined ? scaledScore(score) >= masteryScore : passed
}

function resultOf(verb: Cmi5Verb, { score, durationS = 0 }: Partial<LessonResult>): Record<string, unknown> {
  const duration = isoDuration(durationS)
  if (verb === 'completed') return { completion: true, duration }
  if (verb === 'terminated') return { duration }
  const points = score ? { score: { scaled: scaledScore(score), raw: score.right, min: 0, max: score.of } } : {}
  return { success: verb === 'passed', ...points, duration }
}

function recordOf(value: unknown): Record<string, unknown> {
  return typeof value === 'object' && value !== null ? { ...value } : {}
}
