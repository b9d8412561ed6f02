import type { Place } from './place.ts'

/** The text of one file, able to turn offsets into places. */
export interface SourceText {
  /** Path shown in findings. */
  file: string
  /** The text without a byte order mark; offsets count into this. */
  text: string
  /** The place of the half-open range of UTF-16 offsets `[start, end)`. */
  place(start: number, end?: number): Place
  /** The text of one line (from 1), without its line break. */
  line(number: number): string
}

export function sourceText(file: string, text: string): SourceText {
  const starts = lineStarts(text)
  const position = (offset: number) => {
    const line = lineAt(starts, offset)
    return { line, column: offset - (starts[line - 1] ?? 0) + 1 }
  }
  return {
    file,
    text,
    place(start, end = start) {
      const from = position(start)
      const to = position(end)
      return { file, line: from.line, column: from.column, endLine: to.line, endColumn: to.column }
    },
    line(number) {
      const start = starts[number - 1]
      if (start === undefined) return ''
      return text.slice(start, starts[number] ?? text.length).replace(/[\r\n]+$/, '')
    },
  }
}

/** Offset of the first character of every line. A line ends at LF, CR LF or a lone CR. */
function lineStarts(text: string): number[] {
  const starts = [0]
  for (const { index, 0: end } of text.matchAll(/\r\n|\n|\r/g)) starts.push(index + end.length)
  return starts
}

function lineAt(starts: number[], offset: number): number {
  let low = 0
  let high = starts.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle
  }
  return low + 1
}

/** The offset of a line and column, both from 1, as a parser counts that ends a line at LF, CR LF or a lone CR. */
export function offsetOf(source: SourceText, line: number, column: number): number {
  const lineBreak = /\r\n|\n|\r/g
  for (let at = 1; at < line; at++) if (!lineBreak.exec(source.text)) return source.text.length
  return Math.min(lineBreak.lastIndex + column - 1, source.text.length)
}
