import type { SearchEntry, Terms } from '../entry.ts'
import { type EngineAnswer, mergePages, pageSorts, type RankedPage } from '../merge-pages.ts'
import { indexTerms, planQuery, type TextSearch } from '../plan-query.ts'
import type { ExactHit, FettleSearch, PageHit, PassagePart, SearchOptions, SearchResult } from '../result.ts'
import { dataLoader } from './load-data.ts'
import { withoutHeadings } from './passage.ts'
import { type StartedEngine, startEngine } from './start-engine.ts'

// Runs in the search page, as a classic script.

declare const window: Window & { __fettleVersion: string }

window.FettleSearch = createSearch()

function createSearch(): FettleSearch {
  const script = document.currentScript
  if (!(script instanceof HTMLScriptElement)) throw new Error('search/core.js must be a classic script with an address')
  const folder = script.src.replace(/[^/]*$/, '')
  // The address of this script is the only thing that is right from disk, on a stick and in any sub-folder.
  const root = folder.replace(/[^/]+\/$/, '')
  const addressOf = (path: string) => root + encodeURI(path).replace(/[?#]/g, encodeURIComponent)
  const language = document.documentElement.lang.toLowerCase()
  const load = dataLoader(folder, window.__fettleVersion)

  let engine: Promise<StartedEngine> | undefined
  let mode: StartedEngine['mode'] | undefined
  const ask = async (text: string, limit: number): Promise<EngineAnswer> => {
    engine ??= startEngine({ language, load: (name) => load(name).then(String) })
    const started = await engine
    mode = started.mode
    return started.ask(text, limit)
  }
  const loadTerms = async () => {
    const terms = (await load(`terms.${language}`)) as Terms
    const commonest = terms.words[terms.counts.indexOf(String(Math.max(0, ...[...terms.counts].map(Number))))] ?? ''
    return { index: indexTerms(terms, language), sortOf: pageSorts(terms), commonest }
  }
  let terms: ReturnType<typeof loadTerms> | undefined
  const takeTerms = () => {
    terms ??= loadTerms().catch((error: unknown) => {
      terms = undefined
      throw error
    })
    return terms
  }

  /** All wordings of a query. Names still answer where the engine cannot, so its failure is told, not thrown. */
  async function askAll(
    searches: readonly TextSearch[],
    limit: number,
  ): Promise<{ answers: { weight: number; answer: EngineAnswer }[]; error?: string }> {
    try {
      return { answers: await Promise.all(searches.map(async ({ text, weight }) => ({ weight, answer: await ask(text, limit) }))) }
    } catch (error) {
      return { answers: [], error: error instanceof Error ? error.message : String(error) }
    }
  }

  async function search(query: string, { limit = 10, onNames }: SearchOptions = {}): Promise<SearchResult> {
    // An empty question makes the engine ready while the names are loaded.
    void ask('', 0).catch(() => undefined)
    const { index, sortOf } = await takeTerms()
    const { names, searches, notes, asked } = planQuery(index, query)
    const exactHits = (pages: readonly RankedPage[]) =>
      names.found.slice(0, limit).map(({ entry }): ExactHit => exactHit(entry, entry === names.definite?.entry, pages, addressOf))
    if (names.found.length > 0) onNames?.(exactHits([]))
    const { answers, error } = await askAll(searches, limit + Math.min(names.found.length, limit))
    const ranked = mergePages(answers, sortOf, asked)
    const named = new Set(names.found.flatMap(({ entry }) => (entry.anchor === undefined ? [entry.path] : [])))
    const pages = ranked.filter(({ entry }) => !entry || !named.has(entry.path))
    const textTotal = Math.max(0, ...answers.map(({ answer }) => answer.total))
    return {
      exact: exactHits(ranked),
      near: names.near && names.found.length > 0,
      pages: pages.slice(0, limit).map((page) => pageHit(page, addressOf)),
      notes,
      // Some of the pages found by their text are pages of names, and not all have been looked at.
      total: Math.max(textTotal, names.found.length + pages.length),
      ...(error === undefined ? {} : { engineError: error }),
    }
  }

  return {
    search,
    warm: async () => {
      // The commonest word brings in the files that most queries need, in steps between which a query finds its turn.
      try {
        const [{ commonest }] = await Promise.all([takeTerms(), ask('', 0)])
        for (const pages of [24, 48, 72]) await ask(commonest, pages)
      } catch {
        // The first query meets the same fault and tells it.
      }
    },
    mode: () => mode,
  }
}

function exactHit(entry: SearchEntry, definite: boolean, pages: readonly RankedPage[], addressOf: (path: string) => string): ExactHit {
  const { kind, id, title, place, path, anchor } = entry
  const page = anchor === undefined ? pages.find((page) => page.path === path) : undefined
  return {
    kind,
    id,
    title,
    ...(place === undefined ? {} : { place }),
    url: addressOf(path) + (anchor === undefined ? '' : `#${anchor}`),
    definite,
    ...(page ? { passage: passageOf(page) } : {}),
  }
}

function pageHit(page: RankedPage, addressOf: (path: string) => string): PageHit {
  const { entry, kind, place, path, title, anchor, section } = page
  return {
    kind,
    ...(entry ? { id: entry.id } : {}),
    title: entry?.title ?? title,
    ...(place === undefined ? {} : { place }),
    url: addressOf(path) + (anchor === '' ? '' : `#${anchor}`),
    ...(section === '' ? {} : { section }),
    passage: passageOf(page),
  }
}

function passageOf({ entry, title, section, passage }: RankedPage): PassagePart[] {
  return withoutHeadings(passage, section === '' ? [title, entry?.id ?? '', entry?.title ?? ''] : [section])
}
