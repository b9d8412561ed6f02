import type { ExactHit, SearchResult } from '../../../search/result.ts'
import { fill } from '../../words/fill.ts'
import type { SearchLabels } from './labels.ts'
import { keepQuery, queryOfAddress } from './query-address.ts'
import { showResults } from './show-results.ts'
import { whenUntouched } from './when-untouched.ts'

export interface SearchPlaces {
  form: HTMLFormElement
  input: HTMLInputElement
  results: HTMLElement
  /** Spoken when it changes. */
  status: HTMLElement
  /** Links to the lists: shown while there is nothing better. */
  lists: HTMLElement | null
}

/** A letter that is typed while an answer is made waits for it, but no longer than this. */
const patienceMs = 60
/** Results of each sort at first, and more with each touch of the button. */
const pageSize = 10

/** Renews the results while the reader types. */
export function startLiveSearch({ form, input, results, status, lists }: SearchPlaces, labels: SearchLabels): void {
  const engine = window.FettleSearch
  const more = document.createElement('button')
  more.type = 'button'
  more.className = 'search-more'
  more.textContent = labels.more
  more.hidden = true
  results.after(more)
  const untouched = whenUntouched(results)

  let busy = false
  let typedMeanwhile = false
  let limit = pageSize
  let answered = false
  let latest: { query: string; limit: number; result: Promise<SearchResult | undefined> } | undefined

  const say = (sentences: readonly string[]) => {
    status.textContent = sentences.map((sentence) => (/[.:!?]$/.test(sentence) ? sentence : `${sentence}.`)).join(' ')
  }
  const showLists = (shown: boolean) => {
    if (lists) lists.hidden = !shown
  }

  async function find(query: string, own: () => boolean): Promise<SearchResult | undefined> {
    try {
      if (!engine) throw new Error('search/core.js is not there')
      // The first answer waits for the engine to start, so its names are shown at once.
      const onNames = (exact: ExactHit[]) => {
        if (answered || !own()) return
        showResults(results, { exact, pages: [] }, labels)
        // The line of the count is kept free, so that the rows stay where they are when it comes.
        if (status.textContent === '') status.textContent = '\u00a0'
        showLists(exact.length === 0)
      }
      const result = await engine.search(query, { limit, onNames })
      await untouched()
      answered = true
      if (!own()) return undefined
      showResults(results, result, labels)
      say(describe(query, result, labels))
      const shown = result.exact.length + result.pages.length
      more.hidden = result.total <= shown || shown < pageSize
      showLists(shown === 0)
      return result
    } catch {
      if (own()) {
        results.textContent = ''
        more.hidden = true
        say([labels.failed])
        showLists(true)
      }
      return undefined
    }
  }

  /** Shows the results of what stands in the field now. Gives those that are shown at the end. */
  function renew(): Promise<SearchResult | undefined> {
    const query = input.value.trim()
    if (latest?.query === query && latest.limit === limit) return latest.result
    keepQuery(query)
    if (query === '') {
      latest = undefined
      results.textContent = ''
      more.hidden = true
      say([])
      showLists(true)
      return Promise.resolve(undefined)
    }
    const asked: { query: string; limit: number; result: Promise<SearchResult | undefined> } = { query, limit, result: Promise.resolve(undefined) }
    latest = asked
    asked.result = find(query, () => latest === asked)
    return asked.result
  }

  /** The first letter is answered at once; fast typing on a slow panel does not pile up questions. */
  async function renewInTurn(): Promise<void> {
    typedMeanwhile = true
    if (busy) return
    busy = true
    while (typedMeanwhile) {
      typedMeanwhile = false
      await Promise.race([renew(), new Promise((end) => setTimeout(end, patienceMs))])
    }
    busy = false
  }

  input.addEventListener('input', () => {
    limit = pageSize
    void renewInTurn()
  })
  input.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || input.value === '') return
    event.preventDefault()
    input.value = ''
    limit = pageSize
    void renew()
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    void renew().then((result) => {
      const [first, second] = result?.exact ?? []
      // The beginning of a series names no single thing: its list stays.
      if (first && !result?.near && (first.definite || !second)) location.assign(first.url)
    })
  })
  more.addEventListener('click', () => {
    limit += pageSize
    void renew()
  })
  addEventListener('hashchange', () => {
    input.value = queryOfAddress(location)
    void renew()
  })

  // Coming back, the browser may have filled the field already, and later than the address was written.
  if (input.value === '') input.value = queryOfAddress(location)
  if (input.value === '') void engine?.warm()
  void renew()
  if (matchMedia('(hover: hover) and (pointer: fine)').matches) input.focus()
}

function describe(query: string, { exact, pages, near, notes, total, engineError }: SearchResult, labels: SearchLabels): string[] {
  const count = exact.length + pages.length
  const found = count === 0 ? fill(labels.nothing, { typed: query }) : total === 1 ? labels.oneResult : fill(labels.results, { count: total })
  return [
    found,
    ...(near ? [labels.near] : []),
    ...notes.map((note) =>
      note.kind === 'unknown'
        ? fill(labels.unknown, { typed: note.typed })
        : fill(note.kind === 'spelling' ? labels.instead : labels.also, { ...note }),
    ),
    ...(engineError === undefined ? [] : [labels.namesOnly]),
  ]
}
