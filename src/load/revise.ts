import { isMap, isNode, isScalar, isSeq, parseDocument } from 'yaml'
import { pageSchemas } from '../model/schema/pages.ts'
import { taughtHash } from '../model/taught-hash.ts'
import { frontmatterRange } from '../source/frontmatter-range.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'
import { parseMdx } from './mdx.ts'
import { checkShape } from './shape.ts'

/** A lesson whose last revision holds the hash of what is taught. */
export interface Revised {
  /** The whole file. */
  text: string
  revision: string
  date: string
  /** How it stood to the revision before: never stamped, as stamped, or changed since. */
  before: 'unstamped' | 'same' | 'changed'
}

/** Why a lesson could not be stamped: it has no history, or its history ends with another revision. */
export type Unrevised = { noHistory: true } | { revision: string; last: string }

/** Writes into a lesson the hash of what its last revision teaches. Undefined, with findings, where the page cannot be read. */
export function revise(source: SourceText, sink: Sink): Revised | Unrevised | undefined {
  const { frontmatter: yaml, body } = parseMdx(source, sink)
  const frontmatter = yaml && checkShape(pageSchemas.lessons, yaml, sink, 'the lesson')
  if (!frontmatter || !body) return undefined
  const last = frontmatter.history?.at(-1)
  if (!last) return { noHistory: true }
  if (last.revision !== frontmatter.revision) return { revision: frontmatter.revision, last: last.revision }
  const hash = taughtHash({ frontmatter, source })
  return {
    text: last.hash === hash ? source.text : withHash(source.text, hash),
    revision: last.revision,
    date: last.date,
    before: last.hash === undefined ? 'unstamped' : last.hash === hash ? 'same' : 'changed',
  }
}

/** The file with this hash at the last item of `history`, in the style in which the item is written. */
function withHash(text: string, hash: string): string {
  const { start: open, end: close } = frontmatterRange(text)
  const history = parseDocument(text.slice(open, close)).get('history')
  const item = isSeq(history) ? history.items.at(-1) : undefined
  if (!isMap(item)) throw new Error('a history that was read is a list of maps')
  const old = item.get('hash', true)
  const insert = (from: number, to: number, words: string) => text.slice(0, open + from) + words + text.slice(open + to)
  if (isScalar(old) && old.range) return insert(old.range[0], old.range[1], `'${hash}'`)
  const [first, end] = [item.items[0]?.key, item.items.at(-1)?.value]
  if (!isNode(first) || !isNode(end) || !first.range || !end.range) throw new Error('a map that was read has places')
  if (item.flow) return insert(end.range[1], end.range[1], `, hash: '${hash}'`)
  const lineStart = Math.max(text.lastIndexOf('\n', open + first.range[0]), text.lastIndexOf('\r', open + first.range[0])) + 1
  const lineEnd = /\r\n/.test(text.slice(0, open)) ? '\r\n' : '\n'
  return insert(end.range[1], end.range[1], `${lineEnd}${' '.repeat(open + first.range[0] - lineStart)}hash: '${hash}'`)
}
