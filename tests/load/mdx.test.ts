import { readdirSync, readFileSync } from 'node:fs'
import type { Nodes } from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkMdx from 'remark-mdx'
import remarkParse from 'remark-parse'
import { mdxToMdast } from 'satteri'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'
import { collect } from '../../src/load/load-rules.ts'
import { parseMdx } from '../../src/load/mdx.ts'
import type { Finding } from '../../src/source/finding.ts'
import { sourceText } from '../../src/source/source-text.ts'

function read(text: string): string[] {
  const findings: Finding[] = []
  parseMdx(sourceText('a.mdx', `---\ntitle: a\n---\n${text}`), collect(findings))
  return findings.map(({ rule, message, place }) => `${place.line - 3}:${place.column} ${message} [${rule}]`)
}

describe('parseMdx', () => {
  test.each([
    ['Range {4-20} mA.', ['1:7 `{4-20}` would be computed and not shown as written [expression-in-prose]']],
    ['See drawing {E-101} sheet 3.', ['1:13 `{E-101}` would be computed and not shown as written [expression-in-prose]']],
    ['Drawing {E-014}', ['1:9 `{` starts a computed expression [expression-in-prose]']],
    ['gap to <0.5 mm', ['1:8 `<` followed by `0` starts a tag in MDX [mdx-syntax]']],
    ['Temp < 40 C', []],
    ['Use the set {A, B of screws.', ['1:13 `{` starts a computed expression [expression-in-prose]']],
    ['<Step>\n\ntext', ['1:1 `<Step>` is never closed [mdx-syntax]']],
    ['<Hazard>\ntext\n</Avoid>', ['3:1 `</Avoid>` closes `<Hazard>` [mdx-syntax]']],
    ['import x from "./x.js"', ['1:1 a page cannot import code [code-in-page]']],
    ['export const x = 1', ['1:1 a page cannot export code [code-in-page]']],
    ['a <br> b', ['1:3 `<br>` is never closed [mdx-syntax]']],
    ['{/* a note for writers */}', []],
    ['<!-- a comment -->', ['1:1 `<!--` is not a comment in MDX [mdx-syntax]']],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected))

  test('a page without frontmatter is reported', () => {
    const findings: Finding[] = []
    parseMdx(sourceText('a.mdx', 'text'), collect(findings))
    expect(findings.map(({ rule }) => rule)).toEqual(['missing-frontmatter'])
  })
})

/** The parser we use against remark, the reference: types, names, values and positions of every node. */
describe('the tree equals that of remark', () => {
  const remark = unified().use(remarkParse).use(remarkMdx).use(remarkGfm).use(remarkFrontmatter)
  const pages = [...mdxFiles('example-machine/pages'), ...mdxFiles('content')]

  test('there are pages to compare', () => expect(pages.length).toBeGreaterThan(0))
  test.each(pages)('%s', (file) => {
    const text = readFileSync(file, 'utf8')
    const ours = outline(mdxToMdast(text, { position: true }) as Nodes)
    expect(ours).toEqual(outline(remark.parse(text)))
  })
})

function mdxFiles(dir: string): string[] {
  return readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.mdx'))
    .map((path) => `${dir}/${path.replaceAll('\\', '/')}`)
    .sort()
}

/**
 * One line a node. An element that holds a single line is a block for our parser and stands in a paragraph
 * for remark, so such paragraphs are unwrapped and the two kinds of element are named alike.
 */
function outline(node: Nodes, depth = 0): string[] {
  const only =
    node.type === 'paragraph' &&
    node.children.every((child) => child.type === 'mdxJsxTextElement' || (child.type === 'text' && child.value.trim() === ''))
  if (node.type === 'paragraph' && only) return node.children.filter((child) => child.type !== 'text').flatMap((child) => outline(child, depth))
  const { start, end } = node.position ?? { start: { line: 0, column: 0 }, end: { line: 0, column: 0 } }
  const element = node.type === 'mdxJsxTextElement' || node.type === 'mdxJsxFlowElement'
  const says = element
    ? `element ${node.name} ${JSON.stringify(node.attributes.map((it) => (it.type === 'mdxJsxAttribute' ? [it.name, it.value] : it.type)))}`
    : `${node.type}${'value' in node ? ` ${JSON.stringify(node.value)}` : ''}`
  const own = node.type === 'root' ? [] : [`${'  '.repeat(depth)}${start.line}:${start.column}-${end.line}:${end.column} ${says}`]
  return [...own, ...('children' in node ? node.children.flatMap((child) => outline(child, depth + 1)) : [])]
}

test.each(['\n', '\r\n'])('frontmatter ends before its last line end: %j', (lineEnd) => {
  const findings: Finding[] = []
  const text = ['---', "title: 'Care'", 'tags: [a, b]', '---', 'Text.', ''].join(lineEnd)
  expect(parseMdx(sourceText('a.mdx', text), collect(findings)).frontmatter?.value).toEqual({ title: 'Care', tags: ['a', 'b'] })
  expect(findings).toEqual([])
})
