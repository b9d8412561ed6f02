import { isBroken } from './canonical-json.ts'
import { isDay } from './months.ts'
import { lessonEvents, type TrainingRecord } from './record.ts'

/** Why a value is no record: `path` inside it, `wrong` what is the matter there. */
export interface RecordProblem {
  readonly path: string
  readonly wrong: 'missing' | 'unknown' | 'event' | 'text' | 'day' | 'people' | 'score' | 'object' | 'not-included'
}

type Reader = (value: unknown) => RecordProblem['wrong'] | undefined

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Plain words in one line, up to 500 characters, without blanks at the ends. */
const text: Reader = (value) =>
  typeof value === 'string' && value.length > 0 && value.length <= 500 && value.trim() === value && !/\p{Cc}/u.test(value) && !isBroken(value)
    ? undefined
    : 'text'
const day: Reader = (value) => (typeof value === 'string' && isDay(value) ? undefined : 'day')
const people: Reader = (value) =>
  Array.isArray(value) && value.length > 0 && value.every((it) => !text(it)) && new Set(value).size === value.length ? undefined : 'people'
const score: Reader = (value) => {
  if (!isObject(value) || Object.keys(value).sort().join() !== 'of,right') return 'score'
  const { right, of } = value
  const isCount = Number.isSafeInteger(right) && Number.isSafeInteger(of)
  return isCount && Number(right) >= 0 && Number(of) >= 1 && Number(right) <= Number(of) ? undefined : 'score'
}

interface Shape {
  readonly needed: ReadonlyMap<string, Reader>
  readonly all: ReadonlyMap<string, Reader>
}

const shapeOf = (needed: Readonly<Record<string, Reader>>, optional: Readonly<Record<string, Reader>> = {}): Shape => ({
  needed: new Map(Object.entries(needed)),
  all: new Map([['event', () => undefined], ...Object.entries({ ...optional, ...needed })]),
})
const ofLesson = (needed: Readonly<Record<string, Reader>> = {}): Shape =>
  shapeOf({ person: text, lesson: text, revision: text, date: day, ...needed }, { name: text, contentHash: text, score, by: text, reason: text })
const shapes: ReadonlyMap<unknown, Shape> = new Map([
  ...lessonEvents.map((event) => [event as string, ofLesson()] as const),
  ['signed-off', ofLesson({ by: text })],
  ['waived', ofLesson({ by: text, reason: text })],
  ['revoked', ofLesson({ by: text, reason: text })],
  ['inspected', shapeOf({ procedure: text, people, by: text, date: day }, { revision: text, retrain: people, reason: text })],
  ['named', shapeOf({ person: text, name: text })],
])

/** Reads a body of the journal strictly: nothing unknown, nothing missing. */
export function readRecord(value: unknown): { record: TrainingRecord } | { problem: RecordProblem } {
  const problem = problemOf(value)
  return problem ? { problem } : { record: value as TrainingRecord }
}

function problemOf(value: unknown): RecordProblem | undefined {
  if (!isObject(value)) return { path: '', wrong: 'object' }
  const shape = shapes.get(value.event)
  if (!shape) return { path: 'event', wrong: value.event === undefined ? 'missing' : 'event' }
  const unknown = Object.keys(value).find((name) => !shape.all.has(name))
  if (unknown !== undefined) return { path: unknown, wrong: 'unknown' }
  const missing = [...shape.needed.keys()].find((name) => value[name] === undefined)
  if (missing !== undefined) return { path: missing, wrong: 'missing' }
  for (const [name, read] of shape.all) {
    const wrong = value[name] === undefined ? undefined : read(value[name])
    if (wrong) return { path: name, wrong }
  }
  return inspectionProblem(value)
}

/** Who is to be trained again was included, and there is a reason for it. */
function inspectionProblem({ people: included, retrain, reason }: Record<string, unknown>): RecordProblem | undefined {
  if (!Array.isArray(retrain)) return undefined
  if (reason === undefined) return { path: 'reason', wrong: 'missing' }
  return Array.isArray(included) && retrain.every((person) => included.includes(person)) ? undefined : { path: 'retrain', wrong: 'not-included' }
}
