/** What is wrong with a tag under a grammar, and where in it. */
export interface DesignationFault {
  /** Offset in the tag, in UTF-16 units. */
  offset: number
  reason: string
  /** What to do about it, where that is more than to correct the tag. */
  help?: string
}

/** The character at an offset stands where the grammar takes none like it. */
export function misfit(tag: string, offset: number): DesignationFault {
  const found = String.fromCodePoint(...[tag.codePointAt(offset) ?? 0].filter((point) => point > 0))
  if (found === '') return { offset, reason: 'something is missing at its end' }
  if (/\p{Ll}/u.test(found)) return { offset, reason: `the letter \`${found}\` is not upper case` }
  return { offset, reason: found.trim() === '' ? 'it holds a space' : `\`${found}\` cannot stand there` }
}
