import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { close, createIndex, type PagefindServiceConfig } from 'pagefind'
import type { SearchEntry, SearchPage, Terms } from './entry.ts'
import { packSearch } from './pack.ts'
import { type IndexedPage, partElements, unindexed } from './page-words.ts'
import { wordsOf } from './words.ts'

export type { SearchEntry, SearchPage } from './entry.ts'

/** What is found beside the words of the pages. */
export interface SearchInput {
  /** A folder in the site: results are found from its parent. */
  outDir: string
  languages: readonly string[]
  entries: readonly SearchEntry[]
  /** What the other pages are; one that is not named is just a page. */
  pages: readonly SearchPage[]
  /** For each language groups of words that mean the same, the wording of the pages first. */
  synonyms: Readonly<Record<string, readonly (readonly string[])[]>>
}

/** Pages that Pagefind has been given and has not read: it never waits for the next, and few stay in memory. */
const mostUnderWay = 8

export interface SearchIndex {
  /**
   * Adds a page, in the language of its `<html lang>`; `page` is what was read of it, undefined for one that is left out, as it has no
   * `data-pagefind-body`. Pagefind works beside us, a few pages behind; it takes the pages in their order, which decides the bytes.
   */
  add(path: string, html: string, page: IndexedPage | undefined): Promise<void>
  write(input: SearchInput): Promise<{ files: number; pages: number }>
  close(): Promise<void>
}

/**
 * Opens the search of pages to come; `mostPages`: how many come in the language that has most. The same pages in the same order give
 * the same bytes. Throws when Pagefind cannot index. Not twice at the same time in one process: Pagefind has one service.
 */
export async function openSearch(mostPages: number): Promise<SearchIndex> {
  // Passages of several pages share a file, in each language as many files: fewer to open, and a stick with large
  // clusters holds a tenth of what it would.
  const config: PagefindServiceConfig = {
    keepIndexUrl: true,
    writePlayground: false,
    excludeSelectors: [...unindexed],
    maxFragments: Math.max(20, Math.ceil(mostPages / 20)),
  }
  const { index, errors } = await createIndex(config)
  if (!index) throw new Error(`Pagefind cannot start an index: ${errors.join('; ')}`)
  const read: IndexedPage[] = []
  const underWay: Promise<void>[] = []
  return {
    async add(path, html, page) {
      if (!page) return
      read.push(page)
      if (underWay.length >= mostUnderWay) await underWay.shift()
      // Pages are handed over one by one: when Pagefind walks a folder itself it numbers them in the order of the
      // file system, and the index differs from one disk to the next.
      const added = index.addHTMLFile({ url: `/${path}`, content: partElements(html) }).then(({ errors }) => {
        if (errors.length > 0) throw new Error(`Pagefind cannot index ${path}: ${errors.join('; ')}`)
      })
      // Told by a later page, or by the writing.
      added.catch(() => undefined)
      underWay.push(added)
    },
    async write({ outDir, ...input }) {
      await Promise.all(underWay)
      const made = await index.getFiles()
      if (made.errors.length > 0) throw new Error(`Pagefind cannot write its index: ${made.errors.join('; ')}`)
      const scripts = await packSearch(new Map(made.files.map(({ path, content }) => [path, content])), termsOf(read, input))
      for (const [path, script] of scripts) {
        const file = join(outDir, path)
        mkdirSync(dirname(file), { recursive: true })
        writeFileSync(file, script)
      }
      return { files: scripts.size, pages: read.length }
    },
    async close() {
      await close()
    },
  }
}

/** For each language the names, the words and what means the same. */
function termsOf(read: readonly IndexedPage[], { languages, entries, pages: kinds, synonyms }: Omit<SearchInput, 'outDir'>): Map<string, Terms> {
  const data = new Map<string, Terms>()
  for (const language of languages) {
    const own = entries.filter((entry) => entry.language === language)
    const ofLanguage = read.filter((page) => page.language === language.toLowerCase())
    data.set(`terms.${language.toLowerCase()}`, {
      entries: own,
      pages: kinds.flatMap(({ language: its, ...page }) => (its === language ? [page] : [])),
      ...countWords(ofLanguage, own),
      synonyms: (synonyms[language] ?? []).map((group) => [...group]),
    })
  }
  return data
}

/** The words of all pages with the number of pages that each stands on, as `Terms` holds them. */
function countWords(pages: readonly IndexedPage[], entries: readonly SearchEntry[]): Pick<Terms, 'words' | 'counts'> {
  const pagesWith = new Map<string, number>()
  for (const { words } of pages) for (const word of words) pagesWith.set(word, (pagesWith.get(word) ?? 0) + 1)
  // A word in a name of the data is spelled well, even where one page alone has it.
  const named = new Set(entries.flatMap(({ title }) => wordsOf(title)))
  const counts = [...pagesWith].sort(([a], [b]) => (a < b ? -1 : 1))
  return {
    words: counts.map(([word]) => word),
    counts: counts.map(([word, pages]) => Math.min(9, Math.max(Math.floor(Math.log2(pages)), named.has(word) ? 1 : 0))).join(''),
  }
}
