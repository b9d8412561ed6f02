import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { SearchInput } from '../../../src/search/build-index.ts'
import type { SearchEntry, SearchPage, Terms } from '../../../src/search/entry.ts'
import { pagesIn } from '../../site/built-pages.ts'

/**
 * Writes a site of about so many indexed pages, made of the built example: its pages over and over as those of more stations, each with tags
 * and alarm numbers of its own. Gives what its search is made of.
 */
export function writeManyPages(exampleDir: string, siteDir: string, pages: number): SearchInput & { siteDir: string } {
  const paths = pagesIn(exampleDir)
  const originals = paths.map((path) => [path, readFileSync(join(exampleDir, path), 'utf8')] as const)
  const indexed = originals.filter(([, html]) => html.includes('data-pagefind-body')).length
  const stations = Math.max(1, Math.round(pages / indexed))
  for (let station = 1; station <= stations; station++) {
    for (const [path, html] of originals) {
      const file = join(siteDir, pathAt(path, station))
      mkdirSync(dirname(file), { recursive: true })
      writeFileSync(file, named(html, station))
    }
  }
  const languages = ['en', 'es']
  const terms = languages.map((language) => [language, termsIn(exampleDir, language)] as const)
  const perStation = <T>(make: (station: number) => T[]) => Array.from({ length: stations }, (_, index) => make(index + 1)).flat()
  return {
    siteDir,
    outDir: join(siteDir, 'search'),
    languages,
    entries: terms.flatMap(([language, { entries }]) =>
      perStation((station) =>
        entries.map((entry): SearchEntry => ({ ...entry, id: named(entry.id, station), path: pathAt(entry.path, station), language })),
      ),
    ),
    pages: terms.flatMap(([language, { pages }]) =>
      perStation((station) => pages.map((page): SearchPage => ({ ...page, path: pathAt(page.path, station), language }))),
    ),
    synonyms: Object.fromEntries(terms.map(([language, { synonyms }]) => [language, synonyms])),
  }
}

const pathAt = (path: string, station: number) => (station === 1 ? path : `s${station}/${path}`)

/** PRS204 is PRS3204 at station 3, and alarm A0201 is A30201. */
const named = (text: string, station: number) => (station === 1 ? text : text.replace(/\b([A-Z]{1,5})(\d{3,4})\b/g, `$1${station}$2`))

function termsIn(siteDir: string, language: string): Terms {
  const script = readFileSync(join(siteDir, `search/terms.${language}.js`), 'utf8')
  return JSON.parse(/^__fettleData\("[^"]+",(.*)\);\n$/s.exec(script)?.[1] ?? '') as Terms
}
