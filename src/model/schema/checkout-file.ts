import { z } from 'zod'
import { remembered } from '../../source/once.ts'
import {
  type CheckoutName,
  type CheckoutTechnology,
  checkoutChoices,
  checkoutNumbers,
  checkoutOfCard,
  checkoutOfDevice,
  checkoutOfTechnology,
  checkoutTexts,
} from './checkout-values.ts'
import { identifier } from './common.ts'

/** What a value rests on. */
export const origins = ['data sheet', 'standard', 'measured'] as const
export type Origin = (typeof origins)[number]

const from = z.enum(origins).describe('What its values rest on')
const source = z.string().min(1).optional().describe('Document and page, or who measured and when')

/** A number with the limits of its kind, or the same with an origin of its own. */
function numberOf(takes: (typeof checkoutNumbers)[keyof typeof checkoutNumbers][0]) {
  const number = {
    above: z.number().positive(),
    from: z.number().min(0),
    any: z.number(),
    share: z.number().positive().max(1),
    degrees: z.number().gt(-273.15),
  }[takes]
  return z.union([number, z.strictObject({ value: number, from, source })])
}
const numbers = { above: numberOf('above'), from: numberOf('from'), any: numberOf('any'), share: numberOf('share'), degrees: numberOf('degrees') }

const isNumber = (name: CheckoutName): name is keyof typeof checkoutNumbers => name in checkoutNumbers
const isChoice = (name: CheckoutName): name is keyof typeof checkoutChoices => name in checkoutChoices

/** Each is made once: many technologies share it, and a schema takes time to make. */
const schemaOf = remembered((name: CheckoutName): z.ZodType => {
  if (isNumber(name)) return numbers[checkoutNumbers[name][0]].optional().describe(checkoutNumbers[name][1])
  if (isChoice(name)) return z.enum(checkoutChoices[name][0]).optional().describe(checkoutChoices[name][1])
  return identifier.optional().describe(checkoutTexts[name])
})

const shapeOf = (names: readonly CheckoutName[]) => ({ from, source, ...Object.fromEntries(names.map((name) => [name, schemaOf(name)])) })

const technologies = Object.keys(checkoutOfTechnology) as CheckoutTechnology[]
const [first, ...others] = technologies.map((technology) =>
  z.strictObject({ technology: z.literal(technology), ...shapeOf(checkoutOfTechnology[technology]) }),
)
if (!first) throw new Error('there is no technology')

const supply = z
  .strictObject({
    from,
    source,
    nominalV: numbers.above.describe('Nominal voltage'),
    lowestV: numbers.above.optional().describe('Least voltage at which the machine works'),
    highestV: numbers.above.optional().describe('Highest voltage at which it works'),
  })
  .refine(({ lowestV = 0, nominalV, highestV = nominalV }) => plain(lowestV) <= plain(nominalV) && plain(nominalV) <= plain(highestV), {
    path: ['nominalV'],
    params: { wants: 'lies outside `lowestV` and `highestV`', help: 'correct one of the three' },
  })

const plain = (written: number | { value: number }) => (typeof written === 'number' ? written : written.value)

/** The schema of `checkout.yaml`: what devices, cards and supplies should read. */
export const checkoutFile = z.strictObject({
  supplies: z.record(identifier, supply).optional().describe('Id -> supply of the controls'),
  cards: z
    .record(identifier, z.strictObject(shapeOf(checkoutOfCard)))
    .optional()
    .describe('Card, or part number of cards -> its inputs or outputs'),
  parts: z
    .record(identifier, z.discriminatedUnion('technology', [first, ...others]))
    .optional()
    .describe('Part number -> what the data sheet says'),
  devices: z
    .record(identifier, z.strictObject(shapeOf(checkoutOfDevice)))
    .optional()
    .describe('Tag -> what holds for this device; wins over its part'),
})
