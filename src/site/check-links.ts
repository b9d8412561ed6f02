import { existsSync } from 'node:fs'
import { join, posix } from 'node:path'
import type { DefaultTreeAdapterTypes } from 'parse5'

type HtmlNode = DefaultTreeAdapterTypes.Node

/** Attributes that load or lead to a file. */
const linking = new Set(['href', 'src', 'action', 'srcset', 'poster', 'data', 'xlink:href'])

/**
 * The second net under the links: is given the pages as they are written and tells, when all are there, which link leads to no file
 * or no id, starts at the root or goes outside. The first net reports the author's links at their line.
 */
export function linkCheck(): { add(path: string, read: PageLinks): void; broken(siteDir: string): string[] } {
  const pages = new Map<string, { ids: ReadonlySet<string>; links: readonly string[] }>()
  return {
    add: (path, { ids, links }) => pages.set(path, { ids: new Set(ids), links }),
    broken(siteDir) {
      const leadsSomewhere = (from: string, link: string) => {
        if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(link)) return false
        const [file = '', anchor] = decodeURIComponent(link.replace(/\?[^#]*/, '')).split('#')
        const target = file === '' ? from : posix.normalize(posix.join(posix.dirname(from), file))
        const page = pages.get(target)
        if (page) return !anchor || page.ids.has(anchor)
        // The search files are written after the pages, from them.
        return /^search\/|^\.\.\//.test(target) || existsSync(join(siteDir, target))
      }
      return [...pages].flatMap(([path, { links }]) => links.filter((link) => !leadsSomewhere(path, link)).map((link) => `${path}: ${link}`))
    },
  }
}

/** Where links to a page and from it lead. */
export interface PageLinks {
  ids: readonly string[]
  /** As they are written in the page, each as often as it stands there. */
  links: readonly string[]
}

export function linksOf(tree: HtmlNode): PageLinks {
  const ids: string[] = []
  const links: string[] = []
  const visit = (node: HtmlNode) => {
    if ('attrs' in node) {
      for (const { name, value, prefix } of node.attrs) {
        if (name === 'id') ids.push(value)
        else if (linking.has(prefix ? `${prefix}:${name}` : name)) links.push(value)
      }
    }
    if ('childNodes' in node) for (const child of node.childNodes) visit(child)
  }
  visit(tree)
  return { ids, links }
}
