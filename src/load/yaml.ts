import { isAlias, isCollection, isMap, isNode, isPair, isScalar, type Node, parseDocument, visit, type YAMLMap } from 'yaml'
import { rememberedOf } from '../source/once.ts'
import type { Place } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import { loadRules, type Sink } from './load-rules.ts'

export type Path = readonly (string | number)[]

/** A YAML value and where its parts stand. */
export interface YamlValue {
  value: unknown
  /** The place of the value at a path, or of the nearest owner that is there. */
  placeOf(path: Path): Place
  /** The place of a key in the map at a path; of the map when the key is not there. */
  placeOfKey(path: Path, key: string): Place
  /** The text of the value at a path, as it is written in the file. */
  written(path: Path): string | undefined
}

/**
 * Reads YAML text that starts at `offset` of its file and ends at `end`. Undefined, with findings, when it
 * cannot be read or uses anchors and aliases.
 */
export function parseYaml(source: SourceText, sink: Sink, offset = 0, end = source.text.length): YamlValue | undefined {
  const doc = parseDocument(source.text.slice(offset, end), {
    keepSourceTokens: false,
    prettyErrors: false,
    strict: true,
    stringKeys: true,
    uniqueKeys: true,
    logLevel: 'error',
  })
  const place = (from: number, to: number) => source.place(offset + from, offset + to)
  // What is a warning to the parser, such as a word that it takes for a tag, loses text.
  const [error] = [...doc.errors, ...doc.warnings].sort((a, b) => a.pos[0] - b.pos[0])
  if (error) {
    const { message, length, help } = syntaxProblem(error.code, error.message, source.text.slice(offset + error.pos[0], end))
    sink(loadRules.yamlSyntax, {
      message,
      place: place(error.pos[0], error.pos[0] + length),
      note: 'none of the values in it were checked',
      ...(help ? { help } : {}),
    })
    return undefined
  }
  let alias: Node | undefined
  // An alias is a name behind `*`.
  if (source.text.slice(offset, end).includes('*'))
    visit(doc, {
      Alias(_, node) {
        alias = node
        return visit.BREAK
      },
    })
  if (alias?.range) {
    sink(loadRules.yamlAlias, {
      message: `\`*${isAlias(alias) ? alias.source : ''}\` refers to an anchor`,
      place: place(alias.range[0], alias.range[1]),
      help: 'write the value out here',
      note: 'none of the values in it were checked',
    })
    return undefined
  }
  const nodeAt = (path: Path) => {
    let node: unknown = doc.contents
    for (const key of path) node = isMap(node) ? valuesIn(node).get(key) : isCollection(node) ? node.get(key, true) : undefined
    return isNode(node) ? node : undefined
  }
  const rangeOf = (node: Node | null | undefined) => (node?.range ? place(node.range[0], node.range[1]) : place(0, 0))
  const placeOf = (path: Path): Place => {
    const node = nodeAt(path)
    if (node || path.length === 0) return rangeOf(isMap(node) && node.flow !== true ? firstKey(node) : node)
    return placeOf(path.slice(0, -1))
  }
  return {
    value: doc.toJS({ maxAliasCount: 0 }),
    placeOf,
    placeOfKey(path, key) {
      const owner = nodeAt(path)
      const pair = isMap(owner) ? owner.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === key) : undefined
      return pair && isNode(pair.key) ? rangeOf(pair.key) : placeOf(path)
    },
    written(path) {
      const node = nodeAt(path)
      return isScalar(node) && node.range ? source.text.slice(offset + node.range[0], offset + node.range[1]) : undefined
    },
  }
}

/** The values of a map by their keys: the parser's own search goes through all of them, and lists of devices are long. */
const valuesIn = rememberedOf(
  (map: YAMLMap): ReadonlyMap<unknown, unknown> => new Map(map.items.map(({ key, value }) => [isScalar(key) ? key.value : key, value])),
)

/** A block map is pointed at by its first key: its whole range would underline half the file. */
function firstKey(map: Node | undefined): Node | undefined {
  const first = isMap(map) ? map.items[0] : undefined
  return first && isNode(first.key) ? first.key : map
}

/** What the parser found, in the author's words; `rest` is the text from where it found it. */
function syntaxProblem(code: string, message: string, rest: string): { message: string; length: number; help?: string } {
  const word = /^[^\s:,]+/.exec(rest)?.[0] ?? ''
  // At the end of the text there is nothing to underline.
  const least = rest.trim() === '' ? 0 : 1
  const plain = message.replace(/\.?\s*$/, '').replace(/^[A-Z]/, (letter) => letter.toLowerCase())
  switch (code) {
    case 'DUPLICATE_KEY':
      return { message: `the key \`${word}\` is written twice`, length: word.length, help: 'keep one of them' }
    case 'MULTIPLE_DOCS':
      return { message: 'a second document begins here', length: least, help: 'take the `---` between them out' }
    case 'BLOCK_AS_IMPLICIT_KEY':
      return { message: 'a `:` stands inside a value', length: Math.max(least, word.length), help: 'put the whole value in quotes' }
    case 'TAB_AS_INDENT':
      return { message: 'a tab stands where YAML takes spaces', length: 1, help: 'indent with spaces' }
    case 'TAG_RESOLVE_FAILED':
      if (!word.startsWith('!')) break
      return { message: `\`${word}\` is read as a YAML tag and not as text`, length: word.length, help: 'put the whole value in quotes' }
    case 'NON_STRING_KEY':
      return { message: 'a key is no plain text', length: least, help: 'put it in quotes if it is text' }
    case 'BAD_INDENT':
    case 'MISSING_CHAR':
      return {
        message: plain.replace(/^flow (sequence|map) in block collection must be sufficiently indented and end with a (.)$/, 'a `$2` is missing'),
        length: Math.max(least, word.length),
      }
  }
  return { message: plain, length: Math.max(least, word.length) }
}
