import { z } from 'zod'
import { identifier } from './common.ts'

const day = z.iso.date()
const language = z.string().regex(/^[a-z]{2}$/)
const page = identifier.describe('Page that holds it: front/safety')

/** How the instructions are given with the machine, where it is placed on the market of the European Union. */
export const manual = z.strictObject({
  placedOnMarket: day.describe('Day on which the machine is placed on the market, quoted: it decides which law holds'),
  expectedLifeYears: z.number().positive().describe('How long the machine is expected to last'),
  form: z.enum(['digital', 'paper']).describe('What is given with the machine'),
  digital: z
    .strictObject({
      onlineUntil: day.describe('Day until which it stays online, quoted'),
      accessOn: z.array(z.enum(['machine', 'packaging', 'papers'])).describe('What tells the user how to reach it'),
      canBeSaved: z.boolean().describe('It can be printed, downloaded and saved'),
    })
    .optional(),
  paper: z
    .strictObject({
      isFree: z.boolean().describe('The copy costs nothing'),
      withinDays: z.number().int().positive().describe('It is sent within so many days'),
    })
    .optional()
    .describe('A copy for who asks for it when buying'),
  original: z
    .array(language)
    .min(1)
    .optional()
    .describe('Languages whose version the builder has verified; the others are translations of the original'),
  chapters: z
    .strictObject({ intendedUse: page.optional(), misuse: page.optional(), residualRisks: page.optional(), protectiveEquipment: page.optional() })
    .describe('Where the manual tells what the law asks for and no list of the machine holds'),
})
