/** What a block of text is to its reader; the limits of a sentence depend on it. */
export type BlockKind = 'paragraph' | 'lead-in' | 'item' | 'step' | 'note' | 'message' | 'cell'

/**
 * Text that a reader takes in at once: a sentence never crosses a block. A list is one block for the words that lead
 * in to it and one for each item.
 */
export interface Block {
  kind: BlockKind
  text: string
  /** A further paragraph of a step: the step has said what to do. */
  continues?: true
}

/** Part of a block's text, from `start` up to and without `end`, in UTF-16 units. */
export interface Span {
  start: number
  end: number
}

/**
 * What stands between two spaces, without the punctuation at its edges. All but a `word` count as one word of one
 * syllable, and are never long: a number, a number with its unit (`24 V DC`, also with spaces inside), a tag, part
 * number or version, and an abbreviation.
 */
export interface Token extends Span {
  text: string
  kind: 'word' | 'number' | 'measure' | 'identifier' | 'abbreviation'
}

/** A sentence of a block: its place there, and its words in order. */
export interface Sentence extends Span {
  text: string
  tokens: readonly Token[]
}
