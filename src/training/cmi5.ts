import { type StatementProblem, statementProblems } from './statement-problems.ts'
import { statementSchema } from './statement-schema.ts'

const adl = 'http://adlnet.gov/expapi/verbs/'
const names = ['launched', 'initialized', 'completed', 'passed', 'failed', 'terminated', 'abandoned', 'waived', 'satisfied'] as const
type Verb = (typeof names)[number]
const ofCmi5: readonly Verb[] = ['abandoned', 'waived', 'satisfied']
const verbId = (verb: Verb) => `${ofCmi5.includes(verb) ? 'https://w3id.org/xapi/adl/verbs/' : adl}${verb}`

export const cmi5Category = 'https://w3id.org/xapi/cmi5/context/categories/cmi5'
export const moveOnCategory = 'https://w3id.org/xapi/cmi5/context/categories/moveon'

const withDuration: readonly Verb[] = ['completed', 'passed', 'failed', 'terminated']

/**
 * What is wrong with a value as a statement that cmi5 defines. `masteryScore` (0 to 1) is that of the course.
 * Sources: cmi5 specification, 9.3 verbs, 9.5 results, 9.6.2 categories.
 */
export function cmi5Problems(value: unknown, { masteryScore }: { readonly masteryScore?: number } = {}): StatementProblem[] {
  const wrong = statementProblems(value)
  const read = statementSchema.safeParse(value)
  if (wrong.length > 0 || !read.success) return wrong
  const { verb, result = {}, context = {} } = read.data
  const name = names.find((it) => verbId(it) === verb.id)
  if (!name) return [{ path: 'verb.id', message: 'is no verb of cmi5' }]
  const { score, success, completion, duration } = result
  const categories = (context.contextActivities?.category ?? []).map(({ id }) => id)
  const problems: StatementProblem[] = []
  const must = (holds: boolean, path: string, message: string) => {
    if (!holds) problems.push({ path, message })
  }
  must(score === undefined || name === 'passed' || name === 'failed', 'result.score', 'stands with passed and failed alone')
  must(score?.raw === undefined || (score.min !== undefined && score.max !== undefined), 'result.score.raw', 'needs min and max')
  must(score?.scaled === undefined || score.scaled >= 0, 'result.score.scaled', 'is below 0')
  must(success === successOf(name), 'result.success', `is ${String(successOf(name) ?? 'absent')} with ${name}`)
  must(completion === (name === 'completed' || name === 'waived' ? true : undefined), 'result.completion', 'is true with completed and waived alone')
  must(duration !== undefined || !withDuration.includes(name), 'result.duration', `is needed with ${name}`)
  must(categories.includes(cmi5Category), 'context.contextActivities.category', 'lacks the category cmi5')
  const counts = success !== undefined || completion !== undefined
  must(counts === categories.includes(moveOnCategory), 'context.contextActivities.category', `${counts ? 'lacks' : 'has'} the category moveon`)
  if (masteryScore !== undefined && score?.scaled !== undefined)
    must(name !== 'passed' || score.scaled >= masteryScore, 'result.score.scaled', 'is below the mastery score')
  if (masteryScore !== undefined && score?.scaled !== undefined)
    must(name !== 'failed' || score.scaled < masteryScore, 'result.score.scaled', 'reaches the mastery score')
  return problems
}

function successOf(verb: Verb): boolean | undefined {
  if (verb === 'passed' || verb === 'waived') return true
  return verb === 'failed' ? false : undefined
}
