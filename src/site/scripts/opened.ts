import { element } from './dom.ts'
import { load, save } from './store.ts'

/** A page that was opened: its address below the start page of its language, and what it is called there. */
export interface OpenedPage {
  path: string
  kind: string
  id: string
  title: string
}

const mostKept = 12

/** The list with a page at its front, each page once. */
export function withOpened(list: readonly OpenedPage[], page: OpenedPage): OpenedPage[] {
  return [page, ...list.filter(({ path }) => path !== page.path)].slice(0, mostKept)
}

/** A path leads to a page of this site and nowhere else. */
const inSite = /^[^/:?#\\][^:?#\\]*\.html$/

/** Lines of path, kind, id and title. Of a store that others write too, all that is not of this shape is left out. */
export function readOpened(text = ''): OpenedPage[] {
  return text.split('\n').flatMap((line) => {
    const [path = '', kind = '', id = '', title] = line.split('\t')
    return title && inSite.test(path) ? [{ path, kind, id, title }] : []
  })
}

export function writeOpened(list: readonly OpenedPage[]): string {
  return list.map(({ path, kind, id, title }) => [path, kind, id, title].map((field) => field.replace(/\s+/g, ' ')).join('\t')).join('\n')
}

/** Keeps which page was opened on this panel, and shows the last ones where a page has a place for them. */
export function startOpened(): void {
  const home = document.querySelector<HTMLAnchorElement>('a.plate')?.href
  if (!home) return
  const folder = home.replace(/[^/]*$/, '')
  const { lang, dataset } = document.documentElement
  const key = `fettle.${dataset.site ?? ''}.${lang}.opened`
  const opened = readOpened(load(key))
  const here = pageHere(folder)
  if (here) save(key, writeOpened(withOpened(opened, here)))
  for (const place of document.querySelectorAll<HTMLElement>('[data-opened]')) {
    const kinds = place.dataset.opened?.split(' ').filter(Boolean) ?? []
    const shown = opened.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind)).slice(0, Number(place.dataset.most))
    place.querySelector('ul')?.append(...shown.map((page) => element('li', {}, linkTo(page, folder, place.dataset.short !== undefined))))
    place.hidden = shown.length === 0
  }
}

/** A page with a head is about one thing; lists are not kept. */
function pageHere(folder: string): OpenedPage | undefined {
  const address = location.href.replace(/[?#].*/, '')
  const head = document.querySelector('main header')
  const textOf = (selector: string) => head?.querySelector(selector)?.textContent?.trim() ?? ''
  const title = textOf('h1')
  if (!title || !address.startsWith(folder)) return undefined
  return { path: address.slice(folder.length), kind: document.body.className.replace('kind-', ''), id: textOf('.label, .mono'), title }
}

function linkTo({ path, kind, id, title }: OpenedPage, folder: string, isShort: boolean): HTMLElement {
  const link = element('a', { className: isShort ? '' : 'row' })
  link.setAttribute('href', folder + path)
  if (id) link.append(element('span', { className: kind === 'device' && !isShort ? 'label' : 'row-number mono', text: id }), ' ')
  if (!isShort || !id) link.append(element('span', { className: 'row-main', text: title }))
  else link.setAttribute('aria-label', `${id} ${title}`)
  return link
}
