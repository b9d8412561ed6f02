import type { Code, Root } from 'mdast'
import { toString as textOf } from 'mdast-util-to-string'
import remarkParse from 'remark-parse'
import { unified } from 'unified'

/** One tiny broken machine: the files that differ from the sound one, and the report we expect. */
export interface Case {
  name: string
  /** Path to text, for every fenced block with a path after its language; `remove` takes the file away. */
  files: Map<string, string | undefined>
  expected: Code
}

/** Reads the cases of a rule page: a case is a second-level heading with a `findings` block. */
export function readCases(page: string): Case[] {
  const tree: Root = unified().use(remarkParse).parse(page)
  const cases: Case[] = []
  let name = ''
  let files = new Map<string, string | undefined>()
  for (const node of tree.children) {
    if (node.type === 'heading' && node.depth === 2) {
      name = textOf(node)
      files = new Map()
    } else if (node.type === 'code' && node.lang === 'findings') {
      cases.push({ name, files, expected: node })
    } else if (node.type === 'code' && node.meta) {
      files.set(node.meta, node.lang === 'remove' ? undefined : `${node.value}\n`)
    }
  }
  return cases
}

/** Replaces the text of a `findings` block and leaves the rest of the page as it is. */
export function withFindings(page: string, block: Code, report: string): string {
  const start = block.position?.start.offset ?? 0
  const end = block.position?.end.offset ?? 0
  const lines = report === '' ? '' : `${report}\n`
  return `${page.slice(0, start)}\`\`\`findings\n${lines}\`\`\`${page.slice(end)}`
}
