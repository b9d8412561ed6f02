import { hash } from 'node:crypto'
import { parse } from 'parse5'
import { type IndexedPage, readIndexedPage } from '../search/page-words.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { linksOf, type PageLinks } from './check-links.ts'

/** What is read of a written page. It takes longer to parse a page than to render it, so all of it is read of one tree. */
export interface ReadPage extends PageLinks {
  /** Undefined where the search has nothing of the page. */
  indexed?: IndexedPage | undefined
}

/** Reads pages; `keep` keeps what was read for another reader, which parses only what it does not know. */
export interface PageReader {
  read(html: string): ReadPage
  keep(): void
}

/** Of the unit that was built last: most pages of the others are the same. */
const name = ['pages']

export function pageReader(kept: KeptFiles | undefined): PageReader {
  const known = knownIn(kept?.get(name))
  const read: Record<string, ReadPage> = {}
  return {
    read(html) {
      const key = hash('sha256', html)
      const page = known[key] ?? readPage(html)
      read[key] = page
      return page
    },
    keep() {
      if (Object.keys(read).some((key) => !known[key])) kept?.set(name, Buffer.from(JSON.stringify(read)))
    },
  }
}

// The store gives back what was kept, or nothing.
const knownIn = (made: Uint8Array | undefined): Readonly<Record<string, ReadPage>> =>
  made === undefined ? {} : (JSON.parse(new TextDecoder().decode(made)) as Record<string, ReadPage>)

function readPage(html: string): ReadPage {
  const tree = parse(html)
  return { ...linksOf(tree), indexed: readIndexedPage(tree) }
}
