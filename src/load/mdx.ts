import type { Nodes, Root, RootContent } from 'mdast'
import { mdxToMdast } from 'satteri'
import type { SourceText } from '../source/source-text.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { mdxProblem } from './mdx-error.ts'
import { mostOpenElements, tooManyOpen } from './open-elements.ts'
import { parseYaml, type YamlValue } from './yaml.ts'

/** A page cut into frontmatter and body. `body` is undefined when the MDX is broken. */
export interface ParsedMdx {
  frontmatter: YamlValue | undefined
  body: Root | undefined
}

export function parseMdx(source: SourceText, sink: Sink): ParsedMdx {
  const fence = /^---[ \t]*(?:\r\n|\n|\r)/.exec(source.text)
  const close = fence ? /(?:^|\r\n|[\r\n])---[ \t]*(?:[\r\n]|$)/.exec(source.text.slice(fence[0].length)) : null
  let frontmatter: YamlValue | undefined
  if (fence && close) frontmatter = parseYaml(source, sink, fence[0].length, fence[0].length + close.index)
  else
    sink(loadRules.missingFrontmatter, {
      message: 'the page has no frontmatter',
      place: source.place(0, 1),
      help: 'begin the page with `---`, its title and facts, and `---`',
    })

  const open = tooManyOpen(source.text)
  if (open) {
    sink(loadRules.mdxSyntax, {
      message: `more than ${mostOpenElements} elements are open here`,
      place: source.place(open.offset, open.offset + open.length),
      related: [{ label: 'the outermost was opened here', place: source.place(open.outermost) }],
      note: 'the page was not checked further',
      help: 'close each element with its closing tag, or with `/>` where it is empty',
    })
    return { frontmatter, body: undefined }
  }
  let tree: Nodes
  try {
    // Satteri's own node type names the nodes of mdast; its trees were compared with remark's (see tests/load).
    tree = mdxToMdast(source.text, { position: true }) as Nodes
  } catch (error) {
    const { rule, problem } = mdxProblem(error, source)
    sink(rule, problem)
    return { frontmatter, body: undefined }
  }
  if (tree.type !== 'root') throw new Error('the MDX parser gave no root')
  return { frontmatter, body: { type: 'root', children: withoutCode(tree.children, source, sink) } }
}

/** Lists in lists in messages come to a dozen. What is deeper was made by a slip, and would end every walk through the tree. */
const deepest = 100

/** The nodes without frontmatter and comments. Code, expressions and what is nested too deeply are findings. */
function withoutCode(nodes: readonly RootContent[], source: SourceText, sink: Sink, depth = 0): RootContent[] {
  const [first] = nodes
  if (first && depth > deepest) {
    sink(loadRules.mdxSyntax, {
      message: `the text is nested more than ${deepest} levels deep`,
      place: source.place(first.position?.start.offset ?? 0),
      note: 'what is deeper was not checked',
      help: 'take some of the quotes, lists or elements away',
    })
    return []
  }
  const kept: RootContent[] = []
  for (const node of nodes) {
    if (node.type === 'yaml') continue
    if (node.type === 'mdxjsEsm') {
      sink(loadRules.codeInPage, {
        message: `a page cannot ${/^\s*export/.test(node.value) ? 'export' : 'import'} code`,
        place: placeOf(node, source),
        help: 'remove the line; every element is there without an import',
      })
      continue
    }
    if (node.type === 'mdxTextExpression' || node.type === 'mdxFlowExpression') {
      if (/^\s*(?:\/\*(?:[^*]|\*(?!\/))*\*\/\s*)+$/.test(node.value)) continue
      sink(loadRules.expressionInProse, {
        message: `\`{${node.value}}\` would be computed and not shown as written`,
        place: placeOf(node, source),
        help: `write \`\\{${node.value}\\}\`, or the text without curly brackets`,
      })
      continue
    }
    // The children of a node are of the kinds its type allows; filtering keeps that.
    if ('children' in node) node.children = withoutCode(node.children as RootContent[], source, sink, depth + 1) as typeof node.children
    kept.push(node)
  }
  return kept
}

export function placeOf(node: Nodes, source: SourceText) {
  return source.place(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0)
}
