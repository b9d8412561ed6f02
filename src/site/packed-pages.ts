import { posix } from 'node:path'
import { type DefaultTreeAdapterTypes, defaultTreeAdapter, parse, serialize } from 'parse5'

type HtmlNode = DefaultTreeAdapterTypes.Node
type HtmlElement = DefaultTreeAdapterTypes.Element

export interface PackedPages {
  /** Path -> HTML. */
  pages: ReadonlyMap<string, string>
  /** Paths of the styles, scripts, drawings and pictures that they load. */
  assets: ReadonlySet<string>
}

const loading = new Set(['href', 'src', 'srcset', 'poster', 'data', 'xlink:href'])

/**
 * The pages of a package: the `roots`, and what the text of a root leads to by one link, as far as `mayFollow`. A link to any other
 * page becomes plain text; the rail, the search, other languages and rows of lists that lead out of the package are left out. `read` gives the HTML of a page of the site.
 */
export function packPages(roots: readonly string[], read: (path: string) => string, mayFollow: (path: string) => boolean): PackedPages {
  const documents = new Map(roots.map((path) => [path, parse(read(path))]))
  for (const root of roots) {
    const body = documents.get(root)
    for (const path of body ? linkedFrom(root, body) : []) if (!documents.has(path) && mayFollow(path)) documents.set(path, parse(read(path)))
  }
  const assets = new Set<string>()
  const pages = new Map<string, string>()
  for (const [path, document] of documents) {
    for (const element of [...elementsIn(document)]) trim(element, path, (target) => documents.has(target), assets)
    leaveOutDeadRows(document)
    pages.set(path, serialize(document))
  }
  return { pages, assets }
}

/** The pages to which the main part of a page leads. */
function linkedFrom(path: string, document: HtmlNode): string[] {
  const main = [...elementsIn(document)].find(({ tagName }) => tagName === 'main')
  if (!main) return []
  return [...elementsIn(main)]
    .flatMap((element) => {
      const href = element.tagName === 'a' ? attribute(element, 'href') : undefined
      return href === undefined ? [] : targetOf(path, href)
    })
    .filter((target) => target.endsWith('.html'))
}

/** Takes out of a page what leads out of the package, and notes what it loads. */
function trim(element: HtmlElement, path: string, isPacked: (target: string) => boolean, assets: Set<string>): void {
  const isRail = element.tagName === 'nav' && classesOf(element).includes('rail')
  const isSearch = element.tagName === 'form' && attribute(element, 'action') !== undefined
  if (isRail || isSearch) {
    defaultTreeAdapter.detachNode(element)
    return
  }
  element.attrs = element.attrs.filter(({ name, prefix, value }) => {
    if (!loading.has(prefix ? `${prefix}:${name}` : name)) return true
    const target = targetOf(path, value)
    if (target === path || isPacked(target)) return true
    if (target.endsWith('.html')) return false
    assets.add(target)
    return true
  })
}

/** What is there to lead on alone, and leads nowhere now. */
function leaveOutDeadRows(document: HtmlNode): void {
  const isDead = (element: HtmlElement, kind: string) => classesOf(element).includes(kind) && attribute(element, 'href') === undefined
  const links = [...elementsIn(document)].filter(({ tagName }) => tagName === 'a')
  for (const link of links) if (isDead(link, 'plate-language')) defaultTreeAdapter.detachNode(link)
  for (const link of links) if (isDead(link, 'row') && link.parentNode && 'tagName' in link.parentNode) defaultTreeAdapter.detachNode(link.parentNode)
  const lists = [...elementsIn(document)].filter((element) => element.tagName === 'section' && classesOf(element).includes('links'))
  for (const list of lists)
    if (![...elementsIn(list)].some((element) => attribute(element, 'href') !== undefined)) defaultTreeAdapter.detachNode(list)
}

const classesOf = (element: HtmlElement) => attribute(element, 'class')?.split(' ') ?? []

/** The file that a link leads to, from the root of the site. */
function targetOf(path: string, link: string): string {
  const [file = ''] = link.split(/[?#]/)
  return file === '' ? path : posix.normalize(posix.join(posix.dirname(path), decodeURIComponent(file)))
}

function attribute(element: HtmlElement, name: string): string | undefined {
  return element.attrs.find((it) => it.name === name)?.value
}

function* elementsIn(node: HtmlNode): Generator<HtmlElement> {
  if ('tagName' in node) yield node
  if ('childNodes' in node) for (const child of node.childNodes) yield* elementsIn(child)
}
