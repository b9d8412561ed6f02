import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { type DefaultTreeAdapterTypes, parse } from 'parse5'

type HtmlNode = DefaultTreeAdapterTypes.Node

/** A page of the built site as it was read: it takes longer to parse than to render, so what else is read of it uses this tree. */
export interface ReadPage {
  path: string
  html: string
  tree: DefaultTreeAdapterTypes.Document
}

/** Attributes that load or lead to a file. */
const linking = new Set(['href', 'src', 'action', 'srcset', 'poster', 'data', 'xlink:href'])

/**
 * The second net under the links: reads the built pages and tells which link leads to no file or no id,
 * starts at the root or goes outside. The first net reports the author's links at their line.
 * `onPage` is given each page in the order of the paths.
 */
export async function checkLinks(siteDir: string, onPage?: (page: ReadPage) => Promise<void>): Promise<string[]> {
  const pages = new Map<string, { ids: Set<string>; links: string[] }>()
  for (const path of pagesIn(siteDir)) {
    const html = readFileSync(join(siteDir, path), 'utf8')
    const tree = parse(html)
    pages.set(path, linksOf(tree))
    await onPage?.({ path, html, tree })
  }
  const broken: string[] = []
  for (const [path, { links }] of pages) {
    for (const link of links) {
      if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(link)) broken.push(`${path}: ${link}`)
      else {
        const [file = '', anchor] = decodeURIComponent(link.replace(/\?[^#]*/, '')).split('#')
        const target = file === '' ? path : posix.normalize(posix.join(posix.dirname(path), file))
        const page = pages.get(target)
        // The search files are written after the pages, from them.
        if (!page && !/^search\/|^\.\.\//.test(target) && !existsSync(join(siteDir, target))) broken.push(`${path}: ${link}`)
        if (page && anchor && !page.ids.has(anchor)) broken.push(`${path}: ${link}`)
      }
    }
  }
  return broken
}

/** The pages of a built site by their paths, in code-unit order. */
export function pagesIn(siteDir: string): string[] {
  const paths = readdirSync(siteDir, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/'))
  return paths.filter((path) => path.endsWith('.html')).sort()
}

function linksOf(tree: HtmlNode): { ids: Set<string>; links: string[] } {
  const ids = new Set<string>()
  const links: string[] = []
  const visit = (node: HtmlNode) => {
    if ('attrs' in node) {
      for (const { name, value, prefix } of node.attrs) {
        if (name === 'id') ids.add(value)
        else if (linking.has(prefix ? `${prefix}:${name}` : name)) links.push(value)
      }
    }
    if ('childNodes' in node) for (const child of node.childNodes) visit(child)
  }
  visit(tree)
  return { ids, links }
}
