/** Work of others that every built site carries, and the licence that it carries it under. All else in it is ours or the author's. */
export interface Shipped {
  name: string
  /** The npm package that it comes from. */
  package: string
  /** As its package names it. */
  licence: string
}

export const shipped: readonly Shipped[] = [
  { name: 'Atkinson Hyperlegible', package: '@fontsource/atkinson-hyperlegible', licence: 'OFL-1.1' },
  { name: 'IBM Plex Mono', package: '@fontsource/ibm-plex-mono', licence: 'OFL-1.1' },
  { name: 'noble-hashes', package: '@noble/hashes', licence: 'MIT' },
  { name: 'Pagefind', package: 'pagefind', licence: 'MIT' },
]
