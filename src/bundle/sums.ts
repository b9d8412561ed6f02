import { compare } from '../source/place.ts'

export interface Sum {
  path: string
  sha256: string
}

/**
 * The text of a `SHA256SUMS` file, as `sha256sum` of GNU coreutils writes and reads it: a line whose name holds a
 * backslash, a line feed or a carriage return begins with a backslash, and these characters are escaped in the name.
 */
export function sumsText(sums: readonly Sum[]): string {
  const lines = sums
    .toSorted((a, b) => compare(a.path, b.path))
    .map(({ path, sha256 }) => {
      const escaped = path.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r')
      return `${escaped === path ? '' : '\\'}${sha256}  ${escaped}\n`
    })
  return lines.join('')
}

/** Path -> hash. Undefined when a line is not as `sumsText` writes it or a path stands there twice. */
export function parseSums(text: string): Map<string, string> | undefined {
  const sums = new Map<string, string>()
  for (const line of text.split('\n').slice(0, -1)) {
    const [, mark, sha256, name] = /^(\\?)([0-9a-f]{64}) {2}(.+)$/s.exec(line) ?? []
    if (sha256 === undefined || name === undefined) return undefined
    const path = mark === '' ? name : name.replace(/\\(.)/g, (_, letter: string) => unescaped[letter] ?? letter)
    if (sums.has(path)) return undefined
    sums.set(path, sha256)
  }
  return text === '' || text.endsWith('\n') ? sums : undefined
}

const unescaped: Readonly<Record<string, string>> = { n: '\n', r: '\r' }
