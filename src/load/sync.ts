import { createHash } from 'node:crypto'
import type { Root } from 'mdast'
import { frontmatterTexts } from '../model/frontmatter-texts.ts'
import { translatable } from '../model/schema/pages.ts'
import { type Block, pairBlocks, type StaleText, type Sync, type SyncedBlock } from '../model/sync.ts'
import type { SourceText } from '../source/source-text.ts'
import type { YamlValue } from './yaml.ts'

/** A page in one language as it was read, before a unit takes its part of it. */
export interface ReadPage {
  yaml: YamlValue
  source: SourceText
  body: Root
}

/** Hashes of the texts that a translation renders: one for each text of the frontmatter, and one for each block. */
export type Stamps = { readonly body: readonly string[] } & Readonly<Partial<Record<string, string | readonly string[]>>>

export function blocksOf({ body, source }: Pick<ReadPage, 'body' | 'source'>): Block[] {
  return body.children.map(({ position }) => {
    const [start, end] = [position?.start.offset ?? 0, position?.end.offset ?? 0]
    return { hash: hashOf(source.text.slice(start, end)), start, end, place: source.place(start, end) }
  })
}

/** What a translator has seen of a source. */
export function stampsOf(page: ReadPage): Stamps {
  return { ...Object.fromEntries(textsIn(page.yaml).map(([key, value]) => [key, hashOf(value)])), body: blocksOf(page).map(({ hash }) => hash) }
}

/** How a translation stands to its source, by the hashes that it holds. */
export function syncOf(source: ReadPage, own: ReadPage, stamps: Stamps | undefined): Sync {
  if (!stamps) return { state: 'unstamped' }
  const texts = staleTexts(source.yaml, own.yaml, stamps)
  const sourceBlocks = blocksOf(source)
  const ownBlocks = blocksOf(own)
  const pairs = pairBlocks(
    stamps.body,
    sourceBlocks.map(({ hash }) => hash),
  )
  if (ownBlocks.length !== stamps.body.length) {
    const changed = sourceBlocks.filter((_, index) => !pairs[index]?.same)
    return { state: 'shifted', stamped: stamps.body.length, own: ownBlocks.length, texts, changed }
  }
  return { state: 'paired', texts, blocks: inOrder(ownBlocks, sourceBlocks, pairs) }
}

/** The blocks of the translation, each followed by what the source has added after it. */
function inOrder(own: readonly Block[], source: readonly Block[], pairs: ReturnType<typeof pairBlocks>): SyncedBlock[] {
  const byStamp = new Map(source.flatMap((block, index) => (pairs[index] ? [[pairs[index].stamp, { block, same: pairs[index].same }] as const] : [])))
  const added = new Map<number, SyncedBlock[]>()
  let stamp = -1
  for (const [index, block] of source.entries()) {
    const pair = pairs[index]
    if (pair) stamp = pair.stamp
    else added.set(stamp, [...(added.get(stamp) ?? []), { state: 'added', source: block, after: own[stamp] }])
  }
  const paired = own.flatMap((block, index): SyncedBlock[] => {
    const found = byStamp.get(index)
    const entry: SyncedBlock = found ? { state: found.same ? 'same' : 'changed', own: block, source: found.block } : { state: 'removed', own: block }
    return [entry, ...(added.get(index) ?? [])]
  })
  return [...(added.get(-1) ?? []), ...paired]
}

function staleTexts(source: YamlValue, own: YamlValue, stamps: Stamps): StaleText[] {
  const now = new Map(textsIn(source).map(([key, value]) => [key, hashOf(value)]))
  const ownKeys = new Set(textsIn(own).map(([key]) => key))
  return translatable.flatMap((key): StaleText[] => {
    const [was, is] = [stamps[key], now.get(key)]
    if (was === is) return []
    const state = was === undefined ? 'added' : is === undefined ? 'removed' : 'changed'
    return [{ key, state, place: own.placeOf([ownKeys.has(key) ? key : 'title']), source: source.placeOf([is === undefined ? 'title' : key]) }]
  })
}

/** The texts of a frontmatter that a translation may render, as plain text. */
function textsIn({ value }: YamlValue): [key: string, text: string][] {
  const values = new Map<string, unknown>(typeof value === 'object' && value !== null ? Object.entries(value) : [])
  return translatable.flatMap((key): [string, string][] => {
    const text = values.get(key)
    const lines = frontmatterTexts(key, text).map((it) => it.text)
    return text === undefined ? [] : [[key, lines.join('\n')]]
  })
}

/** Eight hexadecimal digits of SHA-256; spaces and line ends count as one space. */
function hashOf(text: string): string {
  return createHash('sha256').update(text.replace(/\s+/g, ' ').trim()).digest('hex').slice(0, 8)
}
