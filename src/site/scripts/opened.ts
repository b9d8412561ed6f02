import { element } from './dom.ts'
import { load, save } from './store.ts'

/** A page that was opened: its address below the start page of its language, and what it is called there. */
export interface OpenedPage {
  path: string
  kind: string
  id: string
  title: string
}

/** Kinds of pages that answer a question; lists and the manual's own pages are not kept. */
const keptKinds = ['device', 'alarm', 'part', 'drawing', 'lockout', 'procedure', 'format', 'component', 'lesson']
const mostKept = 12

/** The list with a page at its front, each page once. */
export function withOpened(list: readonly OpenedPage[], page: OpenedPage): OpenedPage[] {
  return [page, ...list.filter(({ path }) => path !== page.path)].slice(0, mostKept)
}

/** What was kept; of a store that others write too, all that is not of this shape is left out. */
export function readOpened(text: string | undefined): OpenedPage[] {
  try {
    const list: unknown = JSON.parse(text ?? '[]')
    return Array.isArray(list) ? list.filter(isOpened) : []
  } catch {
    return []
  }
}

function isOpened(it: unknown): it is OpenedPage {
  if (typeof it !== 'object' || it === null) return false
  const page = it as Record<string, unknown>
  const { path } = page
  // A path leads to a page of this site and nowhere else.
  return (
    ['kind', 'id', 'title'].every((name) => typeof page[name] === 'string') && typeof path === 'string' && /^[^/:?#\\][^:?#\\]*\.html$/.test(path)
  )
}

/** Keeps which page was opened on this panel, and shows the last ones where a page has a place for them. */
export function startOpened(): void {
  const home = document.querySelector<HTMLAnchorElement>('a.plate')?.href
  if (!home) return
  const { lang, dataset } = document.documentElement
  const key = `fettle.${dataset.site ?? ''}.${lang}.opened`
  const opened = readOpened(load(key))
  const here = pageHere(home)
  if (here) save(key, JSON.stringify(withOpened(opened, here)))
  for (const place of document.querySelectorAll<HTMLElement>('[data-opened]')) {
    const kinds = place.dataset.opened?.split(' ').filter(Boolean) ?? []
    const shown = opened.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind)).slice(0, Number(place.dataset.most))
    place
      .querySelector('ul')
      ?.append(...shown.map((page) => element('li', {}, place.dataset.short === undefined ? row(page, home) : short(page, home))))
    place.hidden = shown.length === 0
  }
}

function pageHere(home: string): OpenedPage | undefined {
  const kind = /(?:^| )kind-(\S+)/.exec(document.body.className)?.[1] ?? ''
  const folder = home.replace(/[^/]*$/, '')
  const address = location.href.replace(/[?#].*/, '')
  const title = document.querySelector('main h1')?.textContent?.trim() ?? ''
  if (!keptKinds.includes(kind) || !address.startsWith(folder) || title === '') return undefined
  const id = document.querySelector('main header .label, main header .mono')?.textContent?.trim() ?? ''
  return { path: address.slice(folder.length), kind, id, title }
}

function row({ path, kind, id, title }: OpenedPage, home: string): HTMLElement {
  const link = linkTo(path, home, 'row')
  if (id !== '') link.append(element('span', { className: kind === 'device' ? 'label' : 'row-number mono', text: id }), ' ')
  link.append(element('span', { className: 'row-main', text: title }))
  return link
}

function short({ path, id, title }: OpenedPage, home: string): HTMLElement {
  const link = linkTo(path, home, id === '' ? '' : 'mono')
  link.textContent = id || title
  if (id !== '') link.setAttribute('aria-label', `${id} ${title}`)
  return link
}

function linkTo(path: string, home: string, className: string): HTMLElement {
  const link = element('a', { className })
  link.setAttribute('href', home.replace(/[^/]*$/, '') + path)
  return link
}
