import { z } from 'zod'

// Strict shapes of an xAPI 1.0.3 statement (xAPI-Data.md, 2.4) without attachments. In Node only: pages do without zod.

const iri = z.string().regex(/^[a-z][a-z0-9+.-]*:[^\s]+$/i, 'is no absolute IRI')
const languageMap = z.record(z.string().regex(/^[a-z]{2,8}(-[a-z0-9]{1,8})*$/i, 'is no language tag'), z.string())
const extensions = z.record(iri, z.unknown())
const uuid = z.string().regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i, 'is no UUID')
const timestamp = z.iso.datetime({ offset: true, error: 'is no time with its offset from UTC' })
/** ISO 8601: at least one part, and one behind `T`. */
const duration = z
  .string()
  .regex(
    /^P(?=\d|T\d)(\d+(\.\d+)?W|(\d+(\.\d+)?Y)?(\d+(\.\d+)?M)?(\d+(\.\d+)?D)?(T(?=\d)(\d+(\.\d+)?H)?(\d+(\.\d+)?M)?(\d+(\.\d+)?S)?)?)$/,
    'is no duration',
  )

const identifiers = ['mbox', 'mbox_sha1sum', 'openid', 'account'] as const
const identified = {
  name: z.string().optional(),
  mbox: z
    .string()
    .regex(/^mailto:[^@\s]+@[^@\s]+$/, 'is no mailto address')
    .optional(),
  mbox_sha1sum: z
    .string()
    .regex(/^[0-9a-f]{40}$/i, 'is no SHA-1')
    .optional(),
  openid: iri.optional(),
  account: z.strictObject({ homePage: iri, name: z.string().min(1) }).optional(),
}
const countOf = (value: object) => identifiers.filter((name) => Reflect.get(value, name) !== undefined).length
const agent = z
  .strictObject({ objectType: z.literal('Agent').optional(), ...identified })
  .refine((it) => countOf(it) === 1, `needs exactly one of ${identifiers.join(', ')}`)
const group = z
  .strictObject({ objectType: z.literal('Group'), ...identified, member: z.array(agent).min(1).optional() })
  .refine((it) => countOf(it) === 1 || (countOf(it) === 0 && it.member), `needs one of ${identifiers.join(', ')}, or members`)

const activity = z.strictObject({
  objectType: z.literal('Activity').optional(),
  id: iri,
  definition: z
    .strictObject({
      name: languageMap.optional(),
      description: languageMap.optional(),
      type: iri.optional(),
      moreInfo: iri.optional(),
      extensions: extensions.optional(),
    })
    .optional(),
})
const reference = z.strictObject({ objectType: z.literal('StatementRef'), id: uuid })

const score = z
  .strictObject({ scaled: z.number().min(-1).max(1).optional(), raw: z.number().optional(), min: z.number().optional(), max: z.number().optional() })
  .refine(({ min, max }) => min === undefined || max === undefined || min < max, { path: ['min'], message: 'is not below max' })
  .refine(({ raw, min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }) => raw === undefined || (raw >= min && raw <= max), {
    path: ['raw'],
    message: 'is not between min and max',
  })
const result = z.strictObject({
  score: score.optional(),
  success: z.boolean().optional(),
  completion: z.boolean().optional(),
  response: z.string().optional(),
  duration: duration.optional(),
  extensions: extensions.optional(),
})

const activities = z.union([activity, z.array(activity)]).optional()
const context = z.strictObject({
  registration: uuid.optional(),
  instructor: agent.optional(),
  team: group.optional(),
  contextActivities: z
    .strictObject({ parent: activities, grouping: activities, category: z.array(activity).optional(), other: activities })
    .optional(),
  revision: z.string().optional(),
  platform: z.string().optional(),
  language: z.string().optional(),
  statement: reference.optional(),
  extensions: extensions.optional(),
})

/** What a statement may name as its object, by `objectType`. */
export const objectSchemas = { Activity: activity, Agent: agent, Group: group, StatementRef: reference } as const
/** Who can do something, by `objectType`. */
export const actorSchemas = { Agent: agent, Group: group } as const

/** A statement; `actor` and `object` are read by their kind, so that what is wrong is said at its path. */
export const statementSchema = z.strictObject({
  id: uuid.optional(),
  actor: z.looseObject({ objectType: z.enum(['Agent', 'Group']).optional() }),
  verb: z.strictObject({ id: iri, display: languageMap.optional() }),
  object: z.looseObject({ objectType: z.enum(['Activity', 'Agent', 'Group', 'StatementRef']).optional() }),
  result: result.optional(),
  context: context.optional(),
  timestamp: timestamp.optional(),
  stored: timestamp.optional(),
  authority: z.looseObject({}).optional(),
  version: z
    .string()
    .regex(/^1\.0(\.\d+)?$/, 'is no version 1.0')
    .optional(),
})
export type ReadStatement = z.infer<typeof statementSchema>
