import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { type DefaultTreeAdapterTypes, parse } from 'parse5'
import { pagesIn } from '../../site/built-pages.ts'

type HtmlNode = DefaultTreeAdapterTypes.Node
type HtmlElement = DefaultTreeAdapterTypes.Element

/**
 * Writes what one would begin with instead: a plain project of Astro with a collection of MDX that has the pages of a
 * built site, each with the same headings, paragraphs, lists and tables of the same words, and no elements of its own.
 * Returns the number of pages. A page `index` has another name: Astro takes it for its folder.
 */
export function writePlainProject(siteDir: string, projectDir: string): number {
  const write = (path: string, text: string) => {
    const file = join(projectDir, path)
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, text)
  }
  const paths = pagesIn(siteDir)
  for (const path of paths)
    write(
      `src/content/pages/${path.replace(/(?<=^|\/)index\.html$/, 'start.html').replace(/\.html$/, '.mdx')}`,
      mdxOf(readFileSync(join(siteDir, path), 'utf8')),
    )
  write('package.json', '{ "type": "module" }\n')
  write(
    'astro.config.mjs',
    `import mdx from '@astrojs/mdx'
import { defineConfig } from 'astro/config'
export default defineConfig({ integrations: [mdx()], build: { format: 'file' }, vite: { build: { rolldownOptions: { onLog: (level, log, next) => { if (log.code !== 'MODULE_LEVEL_DIRECTIVE') next(level, log) } } } } })
`,
  )
  write(
    'src/content.config.ts',
    `import { defineCollection } from 'astro:content'
import { glob } from 'astro/loaders'
const generateId = ({ entry }) => entry.replace(/\\.mdx$/, '')
export const collections = { pages: defineCollection({ loader: glob({ pattern: '**/*.mdx', base: './src/content/pages', generateId }) }) }
`,
  )
  write(
    'src/pages/[...slug].astro',
    `---
import { getCollection, render } from 'astro:content'
export async function getStaticPaths() {
  return (await getCollection('pages')).map((entry) => ({ params: { slug: entry.id }, props: { entry } }))
}
const { entry } = Astro.props
const { Content } = await render(entry)
---
<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{entry.data.title}</title></head><body><main data-pagefind-body><Content /></main></body></html>
`,
  )
  return paths.length
}

/** The text of a page as Markdown. */
function mdxOf(html: string): string {
  const tree = parse(html)
  const main = find(tree, 'main') ?? tree
  return `---\ntitle: ${JSON.stringify(textOf(find(tree, 'title') ?? tree))}\n---\n\n${blocksOf(main).join('\n\n')}\n`
}

function blocksOf(node: HtmlNode): string[] {
  if (unread.has(node.nodeName)) return []
  const level = /^h([1-6])$/.exec(node.nodeName)?.[1]
  if (level) return written(textOf(node), `${'#'.repeat(Number(level))} `)
  if (node.nodeName === 'table') return tableOf(node)
  if (node.nodeName === 'li' && !hasBlocks(node)) return written(textOf(node), '- ')
  if (!hasBlocks(node)) return written(textOf(node), '')
  return 'childNodes' in node ? node.childNodes.flatMap(blocksOf) : []
}

const written = (text: string, mark: string) => (text === '' ? [] : [`${mark}${text}`])

function tableOf(table: HtmlNode): string[] {
  const rows = all(table, 'tr').map((row) => row.childNodes.filter(({ nodeName }) => /^t[dh]$/.test(nodeName)).map(textOf))
  const [head, ...rest] = rows
  if (!head) return []
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  return [[line(head), line(head.map(() => '---')), ...rest.map(line)].join('\n')]
}

const blocks = new Set(
  'article aside blockquote dd div dl dt figure figcaption form h1 h2 h3 h4 h5 h6 header li nav ol p section table ul'.split(' '),
)
const unread = new Set(['script', 'style', 'noscript', 'template', 'select', 'textarea', 'button', 'svg'])

const hasBlocks = (node: HtmlNode): boolean => 'childNodes' in node && node.childNodes.some((child) => blocks.has(child.nodeName) || hasBlocks(child))

function textOf(node: HtmlNode): string {
  const words = (it: HtmlNode): string => {
    if (unread.has(it.nodeName)) return ''
    if (it.nodeName === '#text' && 'value' in it) return it.value
    return 'childNodes' in it ? it.childNodes.map(words).join(' ') : ''
  }
  return words(node)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_{}[\]<>|#~$&]|^[-+>]|^\d+(?=[.)])/g, '\\$&')
}

function all(node: HtmlNode, name: string): HtmlElement[] {
  const own = node.nodeName === name ? [node as HtmlElement] : []
  return [...own, ...('childNodes' in node ? node.childNodes.flatMap((child) => all(child, name)) : [])]
}

const find = (node: HtmlNode, name: string): HtmlElement | undefined => all(node, name)[0]
