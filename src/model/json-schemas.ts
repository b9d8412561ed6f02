import { z } from 'zod'
import { compare } from '../source/place.ts'
import { acceptedFile } from './schema/accepted-file.ts'
import { checkoutFile } from './schema/checkout-file.ts'
import { energyFile } from './schema/energy-file.ts'
import { glossaryFile } from './schema/glossary-file.ts'
import { hazardsFile } from './schema/hazards-file.ts'
import { machineFile } from './schema/machine-file.ts'
import { pageSchemas, translationSchema } from './schema/pages.ts'
import { trainingFile } from './schema/training-file.ts'

/** The JSON Schemas that editors use for completion: file name and text, in the order of their names. */
export function jsonSchemas(): [name: string, text: string][] {
  const schemas: [string, z.ZodType][] = [
    ['accepted', acceptedFile],
    ['checkout', checkoutFile],
    ['energy', energyFile],
    ['glossary', glossaryFile],
    ['hazards', hazardsFile],
    ['machine', machineFile],
    ...Object.entries(pageSchemas).map(([collection, schema]): [string, z.ZodType] => [`page-${collection}`, schema]),
    ['page-translation', translationSchema],
    ['training', trainingFile],
  ]
  return schemas.sort(([a], [b]) => compare(a, b)).map(([name, schema]) => [`${name}.json`, `${JSON.stringify(z.toJSONSchema(schema), null, 2)}\n`])
}
