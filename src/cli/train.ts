import { advice, suggestFrom } from '../check/suggest.ts'
import { graphOf } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { planLessons } from '../site/training/plan-lessons.ts'
import { usualMinutes } from '../site/training/usual-minutes.ts'
import { fill } from '../site/words/fill.ts'
import { type Labels, labelsOf } from '../site/words/labels.ts'
import type { SessionLimits } from '../training/session-minutes.ts'
import { sessionsOf } from '../training/sessions.ts'
import { machineToPrint } from './load.ts'
import { type Options, UsageError } from './options.ts'
import { heldLessons } from './read-records.ts'
import { today } from './today.ts'
import { type PrintedPlan, planCsv, planJson, planText } from './train-forms.ts'

/** Prints the training plan of a role. Nothing is printed of a folder with errors: what it teaches may be wrong. */
export async function run(options: Options): Promise<number> {
  const [path = '.'] = options.words
  const machine = await machineToPrint(path, options, 'train', 'training plan')
  if (!machine) return 1
  const language = options.get('language') ?? machine.sourceLanguage
  const labels = labelsOf(language)
  if (!labels) throw new UsageError(`there are no words for a plan in the language \`${language}\``)
  const role = roleOf(machine, options.get('role'))
  const asked = planLessons({ machine, graph: graphOf(machine), labels, language }, role.id)
  const held = heldLessons(
    asked.map(({ taught }) => taught),
    options,
    today(),
  )
  if ('refused' in held) {
    process.stderr.write(`${held.refused}\n`)
    return 1
  }
  const done = new Set([...doneIn(machine, options), ...held.statuses.filter(({ status }) => status === 'ok').map(({ lesson }) => lesson)])
  const limits = limitsOf(machine, options)
  const left = asked.filter(({ taught }) => !done.has(taught.id))
  const plan = sessionsOf(
    left.map(({ taught, ...rest }) => ({ id: taught.id, ...rest })),
    limits,
  )
  if (!('sessions' in plan)) throw new UsageError(whyNoPlan(plan, labels))
  const printed: PrintedPlan = { machine, role, language, labels, limits, asked, done, plan, ...held }
  process.stdout.write({ text: planText, json: planJson, csv: planCsv }[formatOf(options)](printed))
  return 0
}

const formatOf = (options: Options) => (['json', 'csv'] as const).find((it) => it === options.get('format')) ?? 'text'

function roleOf({ training: { roles } }: Machine, id: string | undefined) {
  const known = roles.map((role) => role.id)
  const has = known.length > 0 ? `training.yaml has ${known.join(', ')}` : 'the machine has no training.yaml'
  if (id === undefined) throw new UsageError(`--role is missing; ${has}`)
  const role = roles.find((it) => it.id === id)
  if (!role) throw new UsageError(`there is no role \`${id}\`; ${advice(suggestFrom(known)(id), 'role', has)}`)
  return role
}

function doneIn({ pages }: Machine, options: Options): string[] {
  const known = pages.filter(({ collection }) => collection === 'lessons').map(({ name }) => name)
  const done = (options.get('done') ?? '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
  for (const name of done) {
    if (!known.includes(name))
      throw new UsageError(`there is no lesson \`${name}\`; ${advice(suggestFrom(known)(name), 'lesson', '`pages/lessons` has them')}`)
  }
  return done
}

function limitsOf({ training }: Machine, options: Options): SessionLimits {
  const typed = options.get('session')
  if (typed !== undefined && !/^[1-9]\d{0,4}$/.test(typed)) throw new UsageError(`--session takes minutes such as \`45\`, not \`${typed}\``)
  const stated = training.sessions ?? { minutes: usualMinutes }
  return typed === undefined ? stated : { ...stated, minutes: Number(typed) }
}

/** The check refuses loops, so a lesson that is too long is what is left. */
function whyNoPlan(plan: Exclude<ReturnType<typeof sessionsOf>, { sessions: unknown }>, { planTooLong }: Labels): string {
  if ('cycles' in plan) throw new Error('a loop of needs has passed the check')
  return plan.tooLong.map(({ lesson, minutes, limitMinutes }) => fill(planTooLong, { lesson, minutes, limit: limitMinutes })).join(' ')
}
