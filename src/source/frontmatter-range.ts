/** Where the frontmatter of a page stands between its two lines of dashes, in UTF-16 offsets. */
export interface FrontmatterRange {
  /** After the first line of dashes. */
  start: number
  /** Of the second line of dashes; `start` where there is none. */
  end: number
}

export function frontmatterRange(text: string): FrontmatterRange {
  const start = /^---[ \t]*(?:\r\n|\n|\r)/.exec(text)?.[0].length ?? 0
  const close = /(?<=^|[\r\n])---[ \t]*(?:[\r\n]|$)/.exec(text.slice(start))
  return { start, end: start + (close?.index ?? 0) }
}
