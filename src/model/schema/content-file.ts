import { z } from 'zod'

/** The schema of `content.yaml`, which may lie beside the shared pages. */
export const contentFile = z.strictObject({
  language: z
    .string()
    .regex(/^[a-z]{2}$/)
    .describe('Language the shared pages are written in; without this file, that of each machine'),
})
