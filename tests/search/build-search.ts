import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'parse5'
import { openSearch, type SearchInput } from '../../src/search/build-index.ts'
import { readIndexedPage } from '../../src/search/page-words.ts'
import { pagesIn } from '../site/built-pages.ts'

/** Writes the search of a folder of pages, in the order in which a build hands them over. */
export async function buildSearch({ siteDir, ...input }: SearchInput & { siteDir: string }): Promise<{ files: number; pages: number }> {
  const htmlOf = (path: string) => readFileSync(join(siteDir, path), 'utf8')
  const pages = pagesIn(siteDir)
  const index = await openSearch(pages.length)
  try {
    for (const path of pages) {
      const html = htmlOf(path)
      await index.add(path, html, readIndexedPage(parse(html)))
    }
    return await index.write(input)
  } finally {
    await index.close()
  }
}
