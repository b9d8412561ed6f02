import type { SearchEntry, SearchKind, Terms } from './entry.ts'
import type { PassagePart } from './result.ts'

/** A page as the engine gives it. */
export interface EnginePage {
  id: string
  /** Higher is better. Comparable between searches of one index. */
  score: number
  /** From the root of the site. */
  path: string
  title: string
  /** The section that fits best: its id, empty for the page's own beginning, and its heading. */
  anchor: string
  section: string
  passage: PassagePart[]
}

export interface EngineAnswer {
  total: number
  pages: EnginePage[]
}

export interface RankedPage extends EnginePage {
  /** What the page is about, where it is about a thing of the exact index. */
  entry: SearchEntry | undefined
  kind: SearchKind
  place: string | undefined
}

/** What a page is, and the thing of the exact index that it is about. */
export type PageSort = Pick<RankedPage, 'entry' | 'kind' | 'place'>

/** Lifts pages of the kind that was asked for. */
const askedFor = 1.5
/** A lesson speaks of a lockout or a job in its own words. Who asks at the machine wants the lockout or the job first. */
const ofLessons = 0.75

/**
 * Makes one list of the pages of several searches, the best page first. Pages of one thing, and pages of one title,
 * are one hit with the best of them: the sheets of a drawing, a lesson that is written out for each device.
 */
export function mergePages(
  answers: readonly { weight: number; answer: EngineAnswer }[],
  sortOf: (path: string) => PageSort,
  asked: ReadonlySet<SearchKind>,
): RankedPage[] {
  const best = new Map<string, RankedPage>()
  for (const { weight, answer } of answers) {
    for (const page of answer.pages) {
      const { entry, kind, place } = sortOf(page.path)
      const preference = asked.has(kind) ? askedFor : kind === 'lesson' ? ofLessons : 1
      const score = page.score * weight * preference
      const key = entry?.path ?? (page.title || page.id)
      const before = best.get(key)
      if (!before || before.score < score) best.set(key, { ...page, entry, kind, place, score })
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score || (a.path < b.path ? -1 : 1))
}

/**
 * Finds what a page is. The thing that it is about has it as its own page, or above it (`drawings/E-104/2.html` belongs
 * to `drawings/E-104.html`).
 */
export function pageSorts({ entries, pages }: Pick<Terms, 'entries' | 'pages'>): (path: string) => PageSort {
  const byPath = new Map(entries.flatMap((entry) => (entry.anchor === undefined ? [[entry.path, entry] as const] : [])))
  const sorts = new Map(pages.map((page) => [page.path, page]))
  return (path) => {
    const entry = byPath.get(path) ?? byPath.get(path.replace(/\/[^/]*$/, '.html'))
    if (entry) return { entry, kind: entry.kind, place: entry.place }
    const sort = sorts.get(path)
    return { entry: undefined, kind: sort?.kind ?? 'page', place: sort?.place }
  }
}
