import { z } from 'zod'

/** Fewer words than this are no reason that anyone can judge later. */
const leastWords = 3

/** Whether `2026-02-29` is a day of the Gregorian calendar. */
function isDay(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number)
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0
  return day >= 1 && day <= days
}

/** The schema of `accepted.yaml`: findings that may stay for a while. */
export const acceptedFile = z.array(
  z.strictObject({
    rule: z.string().min(1).describe('Id of the rule, as it stands in square brackets behind a message'),
    file: z.string().min(1).describe('Path from the machine folder; `content/…` for a shared page'),
    message: z.string().min(1).describe('The message, or a part of it that no other message of the rule in this file has'),
    reason: z
      .string()
      .refine((text) => text.trim().split(/\s+/).length >= leastWords, `takes a reason of at least ${leastWords} words`)
      .describe('Why it may stay, for whoever reads this in a year'),
    until: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/, { abort: true })
      .refine(isDay, 'there is no such day')
      .describe('The last day on which it may stay: "2027-03-31"'),
  }),
)
export type AcceptedFile = z.infer<typeof acceptedFile>
