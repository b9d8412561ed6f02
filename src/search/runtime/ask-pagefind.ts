import { type Hit, options, type Page, preload, search } from 'pagefind-engine'
import { squash } from '../ident.ts'
import type { EngineAnswer, EnginePage } from '../merge-pages.ts'
import { basePath } from './packed-files.ts'
import { readPassage } from './passage.ts'
import type { Ask, EngineScope } from './scope.ts'

declare const self: EngineScope

/** Words of a passage. */
const excerptLength = 26

/**
 * Sets Pagefind up and gives the way to ask it. Questions are answered one after the other: Pagefind keeps the
 * passages of a page in one place and would mix up those of two questions.
 */
export function pagefindAsker(): Ask {
  // Similarity of the typed word counts double, so that `lift` is found before `lifting`.
  void options({ basePath, baseUrl: '/', noWorker: true, excerptLength, excerptEllipsis: '…', ranking: { termSimilarity: 2 } })
  const widened = new Set<string>()
  let last: Promise<unknown> = Promise.resolve()
  return (text, limit) => {
    const answer = last.then(() => ask(text, limit, widened)).finally(() => failIfIncomplete(widened))
    last = answer.catch(() => undefined)
    return answer
  }
}

/** Pagefind goes on without a file that it cannot load, and would find nothing where there is something. The next question tries again. */
function failIfIncomplete(widened: Set<string>): void {
  const { failure } = self.__fettleHost
  if (failure === undefined) return
  delete self.__fettleHost.failure
  widened.clear()
  throw new Error(failure)
}

async function ask(text: string, limit: number, widened: Set<string>): Promise<EngineAnswer> {
  const words = text.split(' ')
  await Promise.all([preload(text), widen(words[words.length - 1] ?? '', widened)])
  const { results } = await search(text)
  const numbers = words.filter((word) => /\d/.test(word)).map(squash)
  const looked = await Promise.all(results.slice(0, limit).map(async (hit) => ({ hit, page: await hit.data() })))
  // A number on no page is answered with its longest known beginning: 217 with 21.
  const pages = looked.filter(({ page }) => numbers.length === 0 || holdsAll(page, numbers)).map(({ hit, page }) => describe(hit, page))
  return { total: pages.length > 0 ? results.length : 0, pages }
}

/**
 * Pagefind loads the one chunk of its index in which the typed beginning falls; words that begin so and stand in
 * the next chunk are lost. Asking for every continuation of the last word loads that one too.
 */
async function widen(beginning: string, widened: Set<string>): Promise<void> {
  if (beginning.length < 3 || widened.has(beginning)) return
  widened.add(beginning)
  await Promise.all([...'0123456789abcdefghijklmnopqrstuvwxyz'].map((next) => preload(beginning + next)))
}

function holdsAll({ meta, raw_content }: Page, numbers: readonly string[]): boolean {
  const text = squash(`${meta.title ?? ''} ${raw_content}`)
  return numbers.every((number) => text.includes(number))
}

function describe({ id, score }: Hit, page: Page): EnginePage {
  const weight = ({ weighted_locations }: Page['sub_results'][number]) =>
    weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0)
  const [first, ...others] = page.sub_results
  const best = first && others.reduce((best, other) => (weight(other) > weight(best) ? other : best), first)
  const anchor = best?.url.split('#')[1] ?? ''
  const title = page.meta.title ?? ''
  const section = anchor === '' ? '' : (best?.title ?? '')
  return {
    id,
    score,
    path: page.url.replace(/^\//, ''),
    title,
    anchor,
    section,
    passage: readPassage(best?.excerpt ?? page.excerpt),
  }
}
