import type { SearchKind } from '../../../search/entry.ts'

/**
 * What search and its keys say, in the language of the page. A page with `form[data-search]` carries it as JSON in
 * `<script type="application/json" data-search-labels>`.
 */
export interface SearchLabels {
  /** Headings over what was found: devices, alarms, parts, drawings, lockouts, other pages. */
  kinds: Record<SearchKind, string>
  /** `{count} found`; a full stop is added to this and the next seven where they have none. */
  results: string
  oneResult: string
  /** `Nothing found for “{typed}”.` */
  nothing: string
  /** `Searched for “{used}” instead of “{typed}”.` */
  instead: string
  /** `Searched for “{used}” too: that is the word for “{typed}” here.` */
  also: string
  /** `No page has “{typed}”.` */
  unknown: string
  /** Nothing has this name; these come near to it. */
  near: string
  /** The index cannot be loaded; the lists that follow still work. */
  failed: string
  /** Only names were searched: the browser cannot search the text. */
  namesOnly: string
  /** Button that shows more results. */
  more: string
  /** `All {count}`: button that shows the rest of one kind. */
  allOfKind: string
  /** Button beside the field that opens and closes the keys on the screen. */
  keys: string
  closeKeys: string
  space: string
  /** Key that takes the last letter away, and key that empties the field. */
  erase: string
  clear: string
  /** Key that sends the form. */
  find: string
  /** Key that puts accents on the letters; where a language has none of these, it is not shown. */
  accents: string
}

/** What the keys on the screen say. */
export type KeyLabels = Pick<SearchLabels, 'keys' | 'closeKeys' | 'space' | 'erase' | 'clear' | 'find' | 'accents'>

/** Throws when the page lacks its labels: that is a fault of the site, not of the reader. */
export function readLabels(): SearchLabels {
  const text = document.querySelector('[data-search-labels]')?.textContent
  if (!text) throw new Error('the page has a search form and no [data-search-labels]')
  return JSON.parse(text)
}
