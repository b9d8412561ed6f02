/** The part that we use of pagefind.js 1.6.0, which `bundle.ts` provides under this name. */
declare module 'pagefind-engine' {
  interface Location {
    balanced_score: number
  }
  interface Section {
    /** `/tags/PRS104.html#check`, without `#` for the beginning of the page. */
    url: string
    title: string
    /** HTML: text with `&lt;` and `&gt;`, and `<mark>` around what fits. */
    excerpt: string
    weighted_locations: Location[]
  }
  interface Page {
    url: string
    meta: { title?: string }
    excerpt: string
    raw_content: string
    sub_results: Section[]
  }
  interface Hit {
    id: string
    score: number
    data(): Promise<Page>
  }

  export function options(options: {
    basePath: string
    baseUrl: string
    noWorker: boolean
    excerptLength: number
    excerptEllipsis: string
    ranking: { termSimilarity: number }
  }): Promise<void>
  export function preload(text: string): Promise<void>
  export function search(text: string): Promise<{ results: Hit[] }>
}
