import type { SearchKind } from './entry.ts'

/** A stretch of a passage; `marked` where it holds what was searched for. */
export interface PassagePart {
  text: string
  marked: boolean
}

/** A thing that was found by its name. */
export interface ExactHit {
  kind: SearchKind
  id: string
  title: string
  place?: string
  /** Address that can be opened. */
  url: string
  /** The typed text names this thing and no other. */
  definite: boolean
  /** Where the text of its page fits too. */
  passage?: PassagePart[]
}

/** A page that was found by its text. */
export interface PageHit {
  /** The kind of the thing that the page is about, or of the page: a job, a lesson; `page` for any other. */
  kind: SearchKind
  id?: string
  title: string
  place?: string
  /** Address that can be opened, of the section that fits best. */
  url: string
  /** Heading of that section, where it is not the page's own. */
  section?: string
  passage: PassagePart[]
}

/** What was searched for in place of what was typed. */
export type SearchNote =
  | { kind: 'spelling' | 'synonym'; typed: string; used: string }
  /** No page has the word, and none is near to it. It was left out. */
  | { kind: 'unknown'; typed: string }

export interface SearchResult {
  /** Best first. */
  exact: ExactHit[]
  /** Nothing has the typed name; `exact` holds names that are one letter or digit off. */
  near: boolean
  /** Best first, without the pages of `exact`. */
  pages: PageHit[]
  notes: SearchNote[]
  /** How many things and pages were found, at least; more than are listed where the limit cut them off. */
  total: number
  /** Why the text of the pages could not be searched. Names are found all the same. */
  engineError?: string
}

export interface SearchOptions {
  /** Most hits in each of the two lists; 10 unless told. */
  limit?: number
  /** Called with the things found by their name, before the text of the pages has been searched; not without any. */
  onNames?: (exact: ExactHit[]) => void
}

/** What `search/core.js` puts on `window` as `FettleSearch`. */
export interface FettleSearch {
  /** Fails only when the index of names cannot be loaded. */
  search(query: string, options?: SearchOptions): Promise<SearchResult>
  /** Loads beforehand what the first query needs. Never fails. */
  warm(): Promise<void>
  /** Where the engine runs; undefined before its first use. */
  mode(): 'worker' | 'page' | undefined
}
