import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { type DefaultTreeAdapterTypes, parse } from 'parse5'

type HtmlNode = DefaultTreeAdapterTypes.Node

/** Attributes that load or lead to a file. */
const linking = new Set(['href', 'src', 'action', 'srcset', 'poster', 'data', 'xlink:href'])

/**
 * The second net under the links: reads the built pages and tells which link leads to no file or no id,
 * starts at the root or goes outside. The first net reports the author's links at their line.
 */
export function checkLinks(siteDir: string): string[] {
  const pages = new Map<string, { ids: Set<string>; links: string[] }>()
  for (const file of readdirSync(siteDir, { recursive: true, encoding: 'utf8' })) {
    const path = file.replaceAll('\\', '/')
    if (path.endsWith('.html')) pages.set(path, readPage(readFileSync(join(siteDir, file), 'utf8')))
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

function readPage(html: string): { ids: Set<string>; links: string[] } {
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
  visit(parse(html))
  return { ids, links }
}
