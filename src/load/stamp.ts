import { isMap, isNode, parseDocument } from 'yaml'
import { translationSchema } from '../model/schema/pages.ts'
import type { Block, Sync } from '../model/sync.ts'
import { frontmatterRange } from '../source/frontmatter-range.ts'
import type { Place } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'
import { parseMdx } from './mdx.ts'
import { checkShape } from './shape.ts'
import { blocksOf, type ReadPage, stampsOf, syncOf } from './sync.ts'

/** A translation with the hashes of the source that it renders. */
export interface Stamped {
  /** The whole file, with the key `source` of its frontmatter renewed. */
  text: string
  /** How it stood to its source before. */
  before: Sync
  blocks: number
}

/** Two blocks that stand at the same number and are not of one kind, or the first without a partner. */
export interface Unlike {
  own: Place | undefined
  source: Place | undefined
  ownBlocks: number
  sourceBlocks: number
}

/**
 * Writes into a translation which text of its source it renders. Undefined, with findings, when one of the two
 * cannot be read; `unlike` when their blocks do not go in pairs, so that nobody could tell which is which.
 */
export function stamp(own: SourceText, source: SourceText, sink: Sink): Stamped | { unlike: Unlike } | undefined {
  const [ownPage, sourcePage] = [read(own, sink), read(source, sink)]
  const words = ownPage && checkShape(translationSchema, ownPage.yaml, sink, 'the translation')
  if (!ownPage || !sourcePage || !words) return undefined
  const unlike = firstUnlike(ownPage, sourcePage)
  if (unlike) return { unlike }
  const { body, ...texts } = stampsOf(sourcePage)
  const lines = [
    'source:',
    ...Object.entries(texts).map(([key, hash]) => `  ${key}: '${String(hash)}'`),
    `  body: [${body.map((hash) => `'${hash}'`).join(', ')}]`,
  ]
  return { text: withSource(own.text, lines), before: syncOf(sourcePage, ownPage, words.source), blocks: body.length }
}

function read(source: SourceText, sink: Sink): ReadPage | undefined {
  const { frontmatter, body } = parseMdx(source, sink)
  return frontmatter && body && { yaml: frontmatter, body, source }
}

function firstUnlike(own: ReadPage, source: ReadPage): Unlike | undefined {
  const [ownBlocks, sourceBlocks] = [blocksOf(own), blocksOf(source)]
  const kind = ({ body }: ReadPage, index: number) => {
    const node = body.children[index]
    return node && ('name' in node ? `${node.type} ${node.name}` : node.type)
  }
  const longer = Math.max(ownBlocks.length, sourceBlocks.length)
  for (let index = 0; index < longer; index++) {
    if (kind(own, index) === kind(source, index)) continue
    const place = (blocks: readonly Block[]) => blocks[index]?.place
    return { own: place(ownBlocks), source: place(sourceBlocks), ownBlocks: ownBlocks.length, sourceBlocks: sourceBlocks.length }
  }
  return undefined
}

/** The file with these lines in place of the key `source` of its frontmatter, or at its end; its line ends are kept. */
function withSource(text: string, lines: readonly string[]): string {
  const { start: open, end } = frontmatterRange(text)
  const lineEnd = /\r\n/.test(text.slice(0, open)) ? '\r\n' : '\n'
  const block = lines.join(lineEnd) + lineEnd
  const { contents } = parseDocument(text.slice(open, end))
  const pair = isMap(contents) ? contents.items.find(({ key }) => isNode(key) && String(key) === 'source') : undefined
  const [from, to] = [isNode(pair?.key) ? pair.key.range?.[0] : undefined, isNode(pair?.value) ? pair.value.range?.[2] : undefined]
  if (from === undefined || to === undefined) return text.slice(0, end) + block + text.slice(end)
  const rest = text.slice(open + to)
  return text.slice(0, open + from) + (/[\r\n]$/.test(text.slice(0, open + to)) ? block : block.slice(0, -lineEnd.length)) + rest
}
