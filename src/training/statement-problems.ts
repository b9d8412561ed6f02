import type { z } from 'zod'
import { actorSchemas, objectSchemas, type ReadStatement, statementSchema } from './statement-schema.ts'

export interface StatementProblem {
  /** `result.score.scaled` */
  readonly path: string
  readonly message: string
}

/** What is wrong with a value as an xAPI 1.0.3 statement, each at its path; nothing where it is one. */
export function statementProblems(value: unknown): StatementProblem[] {
  const read = statementSchema.safeParse(value)
  if (!read.success) return problemsIn(read.error, [])
  const { actor, object } = read.data
  return [
    ...problemsOf(actorSchemas[actor.objectType ?? 'Agent'], actor, 'actor'),
    ...problemsOf(objectSchemas[object.objectType ?? 'Activity'], object, 'object'),
    ...contextProblems(read.data),
  ]
}

function problemsOf(schema: z.ZodType, value: unknown, name: string): StatementProblem[] {
  const read = schema.safeParse(value)
  return read.success ? [] : problemsIn(read.error, [name])
}

function problemsIn({ issues }: z.ZodError, under: readonly PropertyKey[]): StatementProblem[] {
  return issues.flatMap((issue) => {
    const path = [...under, ...issue.path]
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({ path: [...path, key].join('.'), message: 'is not part of a statement' }))
    return [{ path: path.join('.'), message: issue.message }]
  })
}

/** Revision and platform are those of an activity. */
function contextProblems({ object, context }: ReadStatement): StatementProblem[] {
  if (!context || (object.objectType ?? 'Activity') === 'Activity') return []
  return (['revision', 'platform'] as const)
    .filter((name) => context[name] !== undefined)
    .map((name) => ({ path: `context.${name}`, message: 'needs an activity as object' }))
}
