import { z } from 'zod'
import { identifier } from './common.ts'

/** How a lesson is given; 29 CFR 1910.332(c) knows the classroom and the job, ISO 29993 asks for the split between them. */
export const mode = z.enum(['read', 'demonstrate', 'practise', 'assess'])
export type Mode = z.infer<typeof mode>

/**
 * What the law asks an employer to teach, by 29 CFR 1910.147(c)(7): `authorised`, `affected` and `other` employees, the limits of tags where
 * a tag stands in place of a lock (`tags-only`); by 29 CFR 1910.332: `exposed` and `qualified` people.
 */
export const duties = ['authorised', 'affected', 'other', 'tags-only', 'exposed', 'qualified'] as const
export const duty = z.enum(duties)
export type Duty = z.infer<typeof duty>

/** What a new revision changes: only its text, the procedure that is taught, or a hazard that is new. The last two call for retraining. */
export const change = z.enum(['text', 'procedure', 'new-hazard'])
export type Change = z.infer<typeof change>

const text = z.string().min(1)
const level = z.number().int().min(0).max(4)

const question = z.strictObject({
  ask: text.describe('The question, in words'),
  choose: z.enum(['one', 'several']).optional().describe('How many answers are right; without it, one'),
  answers: z
    .array(
      z.strictObject({
        text: text.describe('The answer, in words'),
        right: z.boolean().optional().describe('Whether it is right; without it, it is wrong'),
        because: text.optional().describe('Why it is right or wrong: shown after answering'),
      }),
    )
    .min(2),
})
export type Question = z.infer<typeof question>

/** What a lesson says about training, besides what it teaches and what comes first. */
export const training = {
  mode: mode.optional().describe('How the lesson is given'),
  covers: z
    .strictObject({
      tags: z.array(identifier).optional().describe('Tags of devices'),
      lockouts: z.array(identifier).optional().describe('Lockouts by the names of their pages'),
      alarms: z.array(identifier).optional().describe('Numbers of alarms'),
      pages: z.array(identifier).optional().describe('Other pages, such as `procedures/start-up`'),
    })
    .optional()
    .describe('What is taught: when it changes, those who took the lesson are told apart'),
  duties: z.array(duty).optional().describe('Duties of the law that the lesson serves'),
  level: level.optional().describe('Level of its skill that it leads to: 1 knows it, 2 does it under supervision, 3 does it alone, 4 can teach it'),
  questions: z.array(question).min(1).optional(),
  passPercent: z.number().int().min(1).max(100).optional().describe('Share of right answers that passes, in percent'),
  practical: z.array(text).min(1).optional().describe('What the learner shows to a person who judges it'),
  signOff: z
    .strictObject({ by: identifier.describe('Role of the person who signs') })
    .optional()
    .describe('The lesson counts once another person has signed it off'),
  validMonths: z.number().int().positive().optional().describe('Months after which it has to be taken again'),
  retrains: z
    .enum(['never', 'major', 'any'])
    .optional()
    .describe('After which revisions it has to be taken again; without it, after those that change a procedure or bring a new hazard'),
  history: z
    .array(
      z.strictObject({
        revision: identifier,
        date: z.iso.date().describe('Day from which it is taught, quoted'),
        change,
        what: text.describe('What has changed, in words'),
        hash: z
          .string()
          .regex(/^[0-9a-f]{8}$/)
          .optional()
          .describe('Of what was taught; `fettle revised` writes it'),
      }),
    )
    .min(1)
    .optional()
    .describe('Revisions of the lesson, the oldest first'),
}

/** The words of the questions in another language, in the same order. */
export const translatedQuestions = z.array(z.strictObject({ ask: text, answers: z.array(z.strictObject({ text, because: text.optional() })).min(2) }))

/** The part of a duty that a role has: to whom 29 CFR 1910.147(c)(7) and 1910.332 apply. */
export const roleDuties = {
  lockout: z.enum(['authorised', 'affected', 'other']).optional().describe('What the role is to lockouts, by 29 CFR 1910.147(c)(7)'),
  electrical: z.enum(['exposed', 'qualified']).optional().describe('At risk of shock and unqualified, or qualified, by 29 CFR 1910.332'),
}
