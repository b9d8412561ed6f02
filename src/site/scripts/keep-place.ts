import { load, save } from './store.ts'

/** Where a reader is on a page, told so that the page in another language can be put there. */
interface Place {
  /** The page that it is meant for. */
  to: string
  /** Which block stands first below the nameplate, of how many, and how far below the edge of the window in px. */
  block: number
  of: number
  topPx: number
  /** How far down, from 0 to 1, where the other page has other blocks. */
  share: number
}

const key = 'fettle.place'

/** Links to another language keep the anchor, and the block that the reader was at. */
export function startLanguages(): void {
  const kept = load(key, 'sessionStorage')
  save(key, undefined, 'sessionStorage')
  const place = kept === undefined ? undefined : readPlace(kept)
  // After the browser has gone to the anchor by itself.
  if (place && place.to === location.pathname && place.share > 0) addEventListener('load', () => setTimeout(() => goTo(place)))
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-keep-anchor]'))
    link.addEventListener('click', () => {
      link.href = link.href.split('#')[0] + location.hash
      save(key, JSON.stringify(placeFor(link.pathname)), 'sessionStorage')
    })
}

const blocks = () => [
  ...document.querySelectorAll('main h1, main h2, main h3, main h4, main p, main li, main tr, main figure, main dt, main fieldset'),
]

const heightPx = () => Math.max(1, document.documentElement.scrollHeight - innerHeight)

function placeFor(to: string): Place {
  const all = blocks()
  const edge = document.querySelector('.head')?.getBoundingClientRect().bottom ?? 0
  const block = all.findIndex((it) => it.getBoundingClientRect().bottom > edge && it.getClientRects().length > 0)
  return { to, block, of: all.length, topPx: all[block]?.getBoundingClientRect().top ?? 0, share: scrollY / heightPx() }
}

function goTo({ block, of, topPx, share }: Place): void {
  const all = blocks()
  const same = all.length === of ? all[block] : undefined
  if (same && same.getClientRects().length > 0) scrollBy(0, same.getBoundingClientRect().top - topPx)
  else scrollTo(0, share * heightPx())
}

function readPlace(kept: string): Place | undefined {
  try {
    const { to, block, of, topPx, share } = JSON.parse(kept)
    return { to: String(to), block: Number(block), of: Number(of), topPx: Number(topPx), share: Number(share) }
  } catch {
    // What another program left under this key is not ours.
    return undefined
  }
}
