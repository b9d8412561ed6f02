import type { Place } from '../source/place.ts'

/** A top-level block of a body, in offsets of its file. */
export interface Block {
  /** Short hash of its text; spaces and line ends do not count. */
  hash: string
  start: number
  end: number
  place: Place
}

/**
 * A block of a translation beside the block of the source that it renders. `changed`: the source block is not
 * the one that was translated; `added`: it has no translation; `removed`: it is gone from the source.
 */
export type SyncedBlock =
  | { state: 'same' | 'changed'; own: Block; source: Block }
  | { state: 'added'; own?: undefined; source: Block; after: Block | undefined }
  | { state: 'removed'; own: Block; source?: undefined }

/** A text of the frontmatter whose source is not the one that was translated. */
export interface StaleText {
  key: string
  state: 'changed' | 'added' | 'removed'
  /** In the translation: the text, or its title where it has none. */
  place: Place
  source: Place
}

/** How a translation stands to its source. */
export type Sync =
  /** It holds no hashes of what was translated. */
  | { state: 'unstamped' }
  /** Blocks were added or taken away in it since its hashes were written. */
  | { state: 'shifted'; stamped: number; own: number; texts: readonly StaleText[]; changed: readonly Block[] }
  /** In the order of the translation; an added block follows the one that it follows in the source. */
  | { state: 'paired'; texts: readonly StaleText[]; blocks: readonly SyncedBlock[] }

/** For each block of the source the index of the stamp that it belongs to, and whether its text is still the stamped one. */
export type Pairing = readonly ({ stamp: number; same: boolean } | undefined)[]

/**
 * Pairs the blocks of a source with the hashes of what was translated. A block that moved keeps its stamp. A
 * changed block is known by its neighbours: it stands after, or before, a block whose stamp is next to it.
 */
export function pairBlocks(stamps: readonly string[], hashes: readonly string[]): Pairing {
  const free = new Map<string, number[]>()
  for (const [index, hash] of stamps.entries()) free.set(hash, [...(free.get(hash) ?? []), index])
  const pairs: ({ stamp: number; same: boolean } | undefined)[] = hashes.map((hash) => {
    const stamp = free.get(hash)?.shift()
    return stamp === undefined ? undefined : { stamp, same: true }
  })
  const open = new Set([...free.values()].flat())
  const take = (index: number, stamp: number) => {
    if (pairs[index] || !open.delete(stamp)) return
    pairs[index] = { stamp, same: false }
  }
  for (let index = 0; index < hashes.length; index++) take(index, index === 0 ? 0 : (pairs[index - 1]?.stamp ?? Number.NaN) + 1)
  for (let index = hashes.length - 1; index >= 0; index--)
    take(index, index === hashes.length - 1 ? stamps.length - 1 : (pairs[index + 1]?.stamp ?? Number.NaN) - 1)
  return pairs
}
