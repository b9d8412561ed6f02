import { z } from 'zod'

const inLanguage = z.strictObject({
  term: z.string().min(1),
  definition: z.string().min(1),
  synonyms: z.array(z.string().min(1)).optional().describe('Other words a reader may type in search'),
  instead: z.array(z.string().min(1)).optional().describe('Words that writers replace with the term, so that one thing has one name'),
})

/** The schema of `glossary.yaml`: term id -> language -> term, definition and synonyms. */
export const glossaryFile = z.record(z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.record(z.string().regex(/^[a-z]{2}$/), inLanguage))
export type GlossaryFile = z.infer<typeof glossaryFile>
