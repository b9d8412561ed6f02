import type { Entry } from './journal.ts'
import { type InspectionRecord, type LessonEvent, type LessonRecord, namesOf } from './record.ts'
import type { Agent, Result, Statement } from './statement.ts'

const adl = 'http://adlnet.gov/expapi'
const verbs: Readonly<Record<LessonEvent | 'inspected', Statement['verb']>> = {
  assigned: { id: `${adl}/verbs/registered`, display: { en: 'was assigned' } },
  completed: { id: `${adl}/verbs/completed`, display: { en: 'completed' } },
  passed: { id: `${adl}/verbs/passed`, display: { en: 'passed' } },
  failed: { id: `${adl}/verbs/failed`, display: { en: 'failed' } },
  'signed-off': { id: `${adl}/verbs/mastered`, display: { en: 'was signed off in' } },
  waived: { id: 'https://w3id.org/xapi/adl/verbs/waived', display: { en: 'was excused from' } },
  // From memory of the verbs of Activity Streams 1.0.
  revoked: { id: 'http://activitystrea.ms/schema/1.0/cancel', display: { en: 'has to repeat' } },
  inspected: { id: `${adl}/verbs/completed`, display: { en: 'inspected' } },
}

export interface XapiOptions {
  /** Absolute address without a slash at its end, from which the ids of lessons and the accounts of people are made. */
  readonly base: string
}

/**
 * A statement for each entry but those that only give a name, which stands with the person instead. The id of a statement comes
 * from the hash of its entry: sent twice, it is one. A day is its midnight in UTC.
 */
export function statementsOf(entries: readonly Entry[], options: XapiOptions): Statement[] {
  const names = namesOf(entries.map(({ body }) => body))
  const agent = (person: string): Agent => {
    const name = names.get(person)
    return { objectType: 'Agent', ...(name === undefined ? {} : { name }), account: { homePage: options.base, name: person } }
  }
  return entries.flatMap((entry) => {
    const { body } = entry
    if (body.event === 'named') return []
    const said = body.event === 'inspected' ? ofInspection(body, agent, options) : ofLesson(body, agent, options)
    const { context, ...what } = said
    const extensions = { [`${options.base}/xapi/entry`]: { seq: entry.seq, hash: entry.hash }, ...context.extensions }
    const fixed = { id: uuidOf(entry.hash), version: '1.0.3', timestamp: `${body.date}T00:00:00.000Z`, verb: verbs[body.event] } as const
    return [{ ...fixed, ...what, context: { ...context, extensions } }]
  })
}

type Said = Pick<Statement, 'actor' | 'object' | 'result' | 'context'>

function ofLesson(record: LessonRecord, agent: (person: string) => Agent, { base }: XapiOptions): Said {
  const { person, lesson, revision, by, reason, contentHash } = record
  const result = resultOf(record)
  return {
    actor: agent(person),
    object: { objectType: 'Activity', id: `${base}/lessons/${encodeURIComponent(lesson)}`, definition: { type: `${adl}/activities/lesson` } },
    ...(result ? { result } : {}),
    context: {
      revision,
      ...(by === undefined ? {} : { instructor: agent(by) }),
      extensions: {
        ...(reason === undefined ? {} : { [`${base}/xapi/reason`]: reason }),
        ...(contentHash === undefined ? {} : { [`${base}/xapi/content-hash`]: contentHash }),
      },
    },
  }
}

function ofInspection(record: InspectionRecord, agent: (person: string) => Agent, { base }: XapiOptions): Said {
  const { procedure, revision, people, by, retrain, reason } = record
  return {
    actor: agent(by),
    object: { objectType: 'Activity', id: `${base}/inspections/${encodeURIComponent(procedure)}`, definition: {} },
    result: { completion: true },
    context: {
      ...(revision === undefined ? {} : { revision }),
      team: { objectType: 'Group', member: people.map(agent) },
      extensions: {
        ...(retrain ? { [`${base}/xapi/to-be-trained-again`]: retrain } : {}),
        ...(reason === undefined ? {} : { [`${base}/xapi/reason`]: reason }),
      },
    },
  }
}

function resultOf({ event, score }: LessonRecord): Result | undefined {
  const scored = score ? { score: { scaled: score.right / score.of, raw: score.right, min: 0 as const, max: score.of } } : {}
  if (event === 'passed' || event === 'failed') return { success: event === 'passed', ...scored }
  if (event === 'completed') return { completion: true }
  return event === 'waived' ? { success: true, completion: true } : undefined
}

/** The first 128 bits of a hash as a UUID, marked as made of a name (version 5, RFC 9562), which every receiver takes. */
function uuidOf(hash: string): string {
  const variant = '89ab'[Number.parseInt(hash.slice(16, 17), 16) % 4]
  return [hash.slice(0, 8), hash.slice(8, 12), `5${hash.slice(13, 16)}`, `${variant}${hash.slice(17, 20)}`, hash.slice(20, 32)].join('-')
}
