import { z } from 'zod'
import { fits, identifier, reader, technology } from './common.ts'
import { lessonOutputs, outputs } from './outputs.ts'
import { training, translatedQuestions } from './training.ts'
import { withoutLockout } from './without-lockout.ts'

export const collections = ['components', 'lessons', 'lockout', 'alarms', 'procedures', 'parts', 'front', 'cautions'] as const
export type Collection = (typeof collections)[number]

const common = {
  title: z.string().min(1).describe('Heading of the page, short and in plain words'),
  summary: z.string().min(1).optional().describe('One sentence that answers first'),
  reader: reader.optional().describe('Whom the page addresses'),
  fits: fits.optional(),
  draft: z.boolean().optional().describe('Not written to its end: the site marks it, and coverage does not count it'),
  order: z.number().int().optional().describe('Place in lists; pages without it follow by title'),
}

const tags = z.array(identifier).describe('Tags of devices')
const tools = z.array(z.string().min(1)).describe('Tools and protective equipment, in words')
const minutes = z.number().int().positive().describe('Time the work takes, in minutes')

/** The frontmatter of each collection in the source language. */
export const pageSchemas = {
  components: z.strictObject({ ...common, tags: tags.min(1) }),
  lessons: z.strictObject({
    ...common,
    revision: identifier.describe('Raised when what is taught changes'),
    minutes,
    technology: z.array(technology).optional().describe('One page is made for each fitted device of these technologies'),
    tags: tags.optional().describe('Devices the lesson is about, where it is not about a technology'),
    needs: z.array(identifier).optional().describe('Lessons that come first'),
    needsSignedOff: z.array(identifier).optional().describe('Lessons that must be signed off in an earlier session'),
    objectives: z.array(z.string().min(1)).min(1).describe('What the learner can do afterwards'),
    roles: z.array(identifier).optional().describe('Roles of training.yaml'),
    ...training,
    outputs: lessonOutputs.optional(),
    tools: tools.optional(),
  }),
  lockout: z.strictObject({
    ...common,
    number: identifier.describe('Short number on the board: LO-1'),
    energy: z.array(identifier).min(1).describe('Ids of energy.yaml, in the order they are isolated'),
    areas: z.array(identifier).min(1).describe('Areas it makes safe to work in'),
    purpose: z.string().min(1).describe('Intended use of the procedure'),
    scope: z.string().min(1).describe('What it makes safe, and what stays live'),
    authorised: z.string().min(1).describe('Who may apply it'),
    responsible: z.string().min(1).describe('Who places, removes and transfers locks, by role'),
    enforcement: z.string().min(1).optional().describe('How the employer enforces it, or where that stands'),
    needsPower: z.boolean().optional().describe('Work under it needs power in between, for a test or to position something'),
    group: z
      .strictObject({
        crews: z.number().int().positive().describe('Crews that work under it at once'),
        responsible: z.string().min(1).optional().describe('The authorised person who answers for the group, by role'),
        coordinator: z.string().min(1).optional().describe('Who coordinates several crews, by role'),
      })
      .optional()
      .describe('For work by a group'),
    users: z.array(z.string().min(1)).optional().describe('People who use this procedure, where the site keeps that here'),
    training: z
      .array(z.strictObject({ employee: z.string().min(1), dates: z.array(z.iso.date()).describe('Days of the training, quoted') }))
      .optional()
      .describe('Training of those who use it, as certified, where the site keeps that here'),
    inspection: z
      .strictObject({
        machine: z.string().min(1).describe('Machine on which the procedure was used'),
        date: z.iso.date().describe('Day of the inspection'),
        employees: z.array(z.string().min(1)).min(1).describe('Employees included'),
        affected: z
          .array(z.string().min(1))
          .min(1)
          .optional()
          .describe('Employees included who work near it and do not use it: needed where a tag stands in place of a lock'),
        inspector: z.string().min(1).describe('An authorised employee who does not use this procedure'),
      })
      .optional()
      .describe('The last periodic inspection, as certified'),
    minutes: minutes.optional(),
    tools: tools.optional(),
  }),
  alarms: z.strictObject({
    ...common,
    alarm: identifier.describe('Number in the alarm list'),
    lockout: z.array(identifier).optional().describe('Lockouts needed for the remedy'),
    outputs: outputs.optional(),
    withoutLockout: withoutLockout.optional(),
    minutes: minutes.optional(),
  }),
  procedures: z.strictObject({
    ...common,
    kind: z.enum(['start', 'stop', 'set-up', 'clean', 'maintain', 'other']),
    minutes,
    interval: z
      .strictObject({ every: z.number().positive(), unit: z.enum(['h', 'day', 'week', 'month', 'year']) })
      .optional()
      .describe('How often, for maintenance'),
    when: z.string().min(1).optional().describe('What calls for it, where no interval does: a strip is torn'),
    tools: tools.optional(),
    tags: tags.optional().describe('Devices it touches'),
    lockout: z.array(identifier).optional().describe('Lockouts applied before it'),
    outputs: outputs.optional(),
    withoutLockout: withoutLockout.optional(),
  }),
  parts: z.strictObject({
    ...common,
    figure: z.string().min(1).describe('Picture of the assembly, path from the machine folder'),
    alt: z.string().min(1).describe('What the picture shows, in words'),
    callouts: z.array(z.strictObject({ number: z.number().int().positive(), part: identifier, quantity: z.number().positive().optional() })).min(1),
  }),
  front: z.strictObject({ ...common }),
  cautions: z.strictObject({ title: z.string().min(1) }),
} as const
export type Frontmatter = { [C in Collection]: z.infer<(typeof pageSchemas)[C]> }

/** Texts of a frontmatter that a translation may render. */
export const translatable = [
  'title',
  'summary',
  'objectives',
  'tools',
  'purpose',
  'scope',
  'authorised',
  'responsible',
  'enforcement',
  'alt',
  'when',
  'questions',
  'practical',
] as const

const hash = z.string().regex(/^[0-9a-f]{8}$/)

/** What a translation writes; all else is inherited from the source page. */
export const translationSchema = z.strictObject({
  title: z.string().min(1),
  summary: z.string().min(1).optional(),
  objectives: z.array(z.string().min(1)).optional(),
  tools: z.array(z.string().min(1)).optional(),
  purpose: z.string().min(1).optional(),
  scope: z.string().min(1).optional(),
  responsible: z.string().min(1).optional(),
  enforcement: z.string().min(1).optional(),
  authorised: z.string().min(1).optional(),
  alt: z.string().min(1).optional(),
  when: z.string().min(1).optional(),
  questions: translatedQuestions.optional(),
  practical: z.array(z.string().min(1)).optional(),
  source: z
    .strictObject({ ...byText(hash.optional()), body: z.array(hash) })
    .optional()
    .describe('Hashes of the source texts that were translated; `fettle translated` writes them'),
})
export type Translation = z.infer<typeof translationSchema>

function byText<T>(schema: T): Record<(typeof translatable)[number], T> {
  return Object.fromEntries(translatable.map((text) => [text, schema])) as Record<(typeof translatable)[number], T>
}
