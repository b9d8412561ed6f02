import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { close, createIndex, type PagefindServiceConfig } from 'pagefind'
import type { SearchEntry, SearchPage, Terms } from './entry.ts'
import { packSearch } from './pack.ts'
import { type IndexedPage, partElements, readIndexedPage, unindexed } from './page-words.ts'
import { wordsOf } from './words.ts'

export type { SearchEntry, SearchPage } from './entry.ts'

export interface SearchInput {
  /** The built site. Pages with `data-pagefind-body` are indexed, in the language of their `<html lang>`. */
  siteDir: string
  /** Below `siteDir`: results are found from the parent of this folder. */
  outDir: string
  languages: readonly string[]
  entries: readonly SearchEntry[]
  /** What the other pages are; one that is not named is just a page. */
  pages: readonly SearchPage[]
  /** For each language groups of words that mean the same, the wording of the pages first. */
  synonyms: Readonly<Record<string, readonly (readonly string[])[]>>
}

/**
 * Writes the search of a built site. The same pages give the same bytes, whatever order the file system lists
 * them in. Throws when Pagefind cannot index. Not twice at the same time in one process: Pagefind has one service.
 */
export async function buildSearch({
  siteDir,
  outDir,
  languages,
  entries,
  pages: kinds,
  synonyms,
}: SearchInput): Promise<{ files: number; pages: number }> {
  const pages = readPages(siteDir)
  const pagefind = await indexPages(pages)
  const data = new Map<string, Terms>()
  for (const language of languages) {
    const own = entries.filter((entry) => entry.language === language)
    const ofLanguage = pages.flatMap(({ page }) => (page.language === language.toLowerCase() ? [page] : []))
    data.set(`terms.${language.toLowerCase()}`, {
      entries: own,
      pages: kinds.flatMap(({ language: its, ...page }) => (its === language ? [page] : [])),
      ...countWords(ofLanguage, own),
      synonyms: (synonyms[language] ?? []).map((group) => [...group]),
    })
  }
  const scripts = await packSearch(pagefind, data)
  for (const [path, script] of scripts) {
    const file = join(outDir, path)
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, script)
  }
  return { files: scripts.size, pages: pages.length }
}

interface BuiltPage {
  path: string
  html: string
  page: IndexedPage
}

function readPages(siteDir: string): BuiltPage[] {
  const paths = readdirSync(siteDir, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/'))
  return paths
    .filter((path) => path.endsWith('.html'))
    .sort()
    .flatMap((path) => {
      const html = readFileSync(join(siteDir, path), 'utf8')
      const page = readIndexedPage(html)
      return page ? [{ path, html, page }] : []
    })
}

/**
 * Pagefind's files in memory. Pages are handed over one by one: when Pagefind walks a folder itself it numbers
 * the pages in the order of the file system, and the index differs from one disk to the next.
 */
async function indexPages(pages: readonly BuiltPage[]): Promise<Map<string, Uint8Array>> {
  // Passages of several pages share a file, in each language as many files: fewer to open, and a stick with large
  // clusters holds a tenth of what it would.
  const config: PagefindServiceConfig = {
    keepIndexUrl: true,
    writePlayground: false,
    excludeSelectors: [...unindexed],
    maxFragments: Math.max(20, Math.ceil(pagesOfLargestLanguage(pages) / 20)),
  }
  try {
    const { index, errors } = await createIndex(config)
    if (!index) throw new Error(`Pagefind cannot start an index: ${errors.join('; ')}`)
    for (const { path, html } of pages) {
      const added = await index.addHTMLFile({ url: `/${path}`, content: partElements(html) })
      if (added.errors.length > 0) throw new Error(`Pagefind cannot index ${path}: ${added.errors.join('; ')}`)
    }
    const made = await index.getFiles()
    if (made.errors.length > 0) throw new Error(`Pagefind cannot write its index: ${made.errors.join('; ')}`)
    return new Map(made.files.map(({ path, content }) => [path, content]))
  } finally {
    await close()
  }
}

function pagesOfLargestLanguage(pages: readonly BuiltPage[]): number {
  const count = new Map<string, number>()
  for (const { page } of pages) count.set(page.language, (count.get(page.language) ?? 0) + 1)
  return Math.max(0, ...count.values())
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
