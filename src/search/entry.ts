/** What a thing is, in the order in which a reader would look it up. */
export const searchKinds = ['tag', 'alarm', 'part', 'drawing', 'lockout', 'hazard', 'job', 'assembly', 'lesson', 'page'] as const
export type SearchKind = (typeof searchKinds)[number]

/** One thing that search finds by its name. The names come from the machine's data, never from the built pages. */
export interface SearchEntry {
  /** As written on the thing: `PRS104`, `A0217`, `4410-0112`. */
  id: string
  kind: SearchKind
  /** From the root of the site: `es/tags/PRS104.html`. */
  path: string
  /** Where on that page, for a thing that has no page of its own. */
  anchor?: string
  title: string
  /** Where it is, in a few words. */
  place?: string
  language: string
}

/** What a page without a name of its own is: a job, a lesson. */
export interface SearchPage {
  path: string
  kind: SearchKind
  /** Where on the machine its job is done, in a few words. */
  place?: string
  language: string
}

/** The exact index of one language, as `terms.<language>.js` carries it. */
export interface Terms {
  entries: SearchEntry[]
  pages: Omit<SearchPage, 'language'>[]
  /** Folded words of the pages, in code-unit order. */
  words: string[]
  /** For each word a digit: 0 for one page, then the number of pages as a power of two, at most 9. */
  counts: string
  /** Words of one meaning: the wording of the pages first, then what else a reader may type. */
  synonyms: string[][]
}
