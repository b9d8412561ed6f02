import { sourceText } from '../../../src/source/source-text.ts'
import { type Files, textOf } from '../example.ts'
import type { Random } from '../random.ts'
import type { Example } from './read-example.ts'

export interface Spot {
  file: string
  line: number
}

/**
 * A slip that nothing contradicts by itself: it names another thing of the same kind that is really there, or
 * leaves out what nobody has to write.
 */
export type Beyond = 'another real thing' | 'nobody has to write it'

/** One slip over the example machine. */
export interface Mistake {
  kind: string
  /** What was done, in one line. */
  what: string
  /** The machine with the slip in it. */
  files: Files
  /** Where it may rightly be reported: the changed lines, or the owners of what is missing. */
  at: readonly Spot[]
  /** Why no check can be sure to see it. These are counted apart. */
  beyond?: Beyond
}

export interface Kind {
  name: string
  /** How many are made. */
  count: number
  make(example: Example, random: Random): Iterable<Omit<Mistake, 'kind'>>
}

/** A piece of a text file, in UTF-16 offsets. */
export interface Piece {
  file: string
  start: number
  end: number
  value: string
}

/** Puts another text in the place of a piece; the changed lines are where it may be reported. */
export function replaced(files: Files, { file, start, end }: Piece, text: string, what?: string): Omit<Mistake, 'kind'> {
  const before = textOf(files, file)
  const after = before.slice(0, start) + text + before.slice(end)
  const { line, endLine } = sourceText(file, after).place(start, start + text.length)
  const at = Array.from({ length: endLine - line + 1 }, (_, index) => ({ file, line: line + index }))
  return {
    what: `${file}:${line}: ${what ?? `${shown(before.slice(start, end))} became ${shown(text)}`}`,
    files: new Map([...files, [file, after]]),
    at,
  }
}

export function removed(files: Files, path: string): Files {
  return new Map([...files].filter(([name]) => name !== path))
}

/** Every line that names a thing: the owners of what was taken away or renamed. */
export function mentions(files: Files, name: string): Spot[] {
  const spots: Spot[] = []
  for (const [file, content] of files) {
    if (typeof content !== 'string' || !content.includes(name)) continue
    for (const [index, text] of content.split(/\r\n|\n/).entries()) if (names(text, name)) spots.push({ file, line: index + 1 })
  }
  return spots
}

function names(text: string, name: string): boolean {
  for (let at = text.indexOf(name); at !== -1; at = text.indexOf(name, at + 1)) {
    if (!/[\p{L}\p{N}]/u.test((text[at - 1] ?? ' ') + (text[at + name.length] ?? ' '))) return true
  }
  return false
}

export const also = (mistake: Omit<Mistake, 'kind'>, at: readonly Spot[]): Omit<Mistake, 'kind'> => ({ ...mistake, at: [...mistake.at, ...at] })

/** All lines of a file. */
export function linesOf(files: Files, file: string, until?: string): Spot[] {
  const text = textOf(files, file)
  const end = until === undefined ? text.length : text.indexOf(until, 4)
  return text
    .slice(0, end === -1 ? text.length : end)
    .split('\n')
    .map((_, index) => ({ file, line: index + 1 }))
}

const shown = (text: string) => `\`${text.length > 60 ? `${text.slice(0, 59)}…` : text}\``.replace(/\s+/g, ' ')
