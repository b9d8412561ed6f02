import type { SearchEntry, SearchKind } from './entry.ts'
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
}

/** Lifts pages of the kind that was asked for. */
const askedFor = 1.5
/** A lesson speaks of a lockout or a job in its own words. Who asks at the machine wants the lockout or the job first. */
const ofLessons = 0.75
const isLesson = (path: string) => /(?:^|\/)(?:lessons|checks)\//.test(path)

/**
 * Makes one list of the pages of several searches, the best page first. Pages of one thing, and pages of one title,
 * are one hit with the best of them: the sheets of a drawing, a lesson that is written out for each device.
 */
export function mergePages(
  answers: readonly { weight: number; answer: EngineAnswer }[],
  entryOf: (path: string) => SearchEntry | undefined,
  asked: ReadonlySet<SearchKind>,
): RankedPage[] {
  const best = new Map<string, RankedPage>()
  for (const { weight, answer } of answers) {
    for (const page of answer.pages) {
      const entry = entryOf(page.path)
      const score = page.score * weight * (entry && asked.has(entry.kind) ? askedFor : 1) * (isLesson(page.path) ? ofLessons : 1)
      const key = entry?.path ?? (page.title || page.id)
      const before = best.get(key)
      if (!before || before.score < score) best.set(key, { ...page, entry, score })
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score || (a.path < b.path ? -1 : 1))
}

/**
 * Finds the thing that a page is about: its own page, or a page below it (`drawings/E-104/2.html` belongs
 * to `drawings/E-104.html`).
 */
export function pageOwners(entries: readonly SearchEntry[]): (path: string) => SearchEntry | undefined {
  const byPath = new Map(entries.flatMap((entry) => (entry.anchor === undefined ? [[entry.path, entry] as const] : [])))
  return (path) => byPath.get(path) ?? byPath.get(path.replace(/\/[^/]*$/, '.html'))
}
