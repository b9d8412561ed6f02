/** What can be hard or wrong in a sentence. The rules of the check say each in words; a test holds the two together. */
export const plainKinds = [
  'long-sentence',
  'long-paragraph',
  'several-instructions',
  'no-command',
  'late-condition',
  'missing-comma',
  'passive',
  'noun-cluster',
  'contraction',
  'semicolon',
  'doubled-word',
  'stacked-negative',
  'command-in-note',
  'unexpanded-abbreviation',
  'unit-not-si',
  'unit-form',
  'decimal-sign',
  'plain-word',
  'replaced-term',
] as const
export type PlainKind = (typeof plainKinds)[number]

/** Something hard to read, at `[start, end)` of the text of its block. */
export interface PlainFinding {
  kind: PlainKind
  start: number
  end: number
  /** What stands there. */
  words: string
  /** What can stand there instead, in the language of the text; only where it is certain. */
  suggestion?: string
  /** False where the words can be read in another way, in which they are right. */
  sure: boolean
  /** Words or sentences counted, and how many there may be, where the finding is about a length. */
  count?: { is: number; limit: number }
  /** Terms of the glossary that replace the words. */
  terms?: readonly string[]
}
