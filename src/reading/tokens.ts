import type { Token } from './block.ts'
import { kindOf } from './token-kind.ts'
import { continuesUnit, isUnit } from './unit-symbols.ts'

/** What stands between two spaces: all of it from `from` to `to`, and without the punctuation at its edges. */
interface Chunk {
  from: number
  to: number
  start: number
  end: number
  text: string
}

// A dash is a space, unless it stands between two digits.
const chunkPattern = /[^\s—–]+(?:(?<=\d)[—–](?=\d)[^\s—–]+)*/g
const invisible = /[\u00AD\u200B\u2060\uFEFF]/g
const groupSpace = /^[\u00A0\u2009\u202F]$/

/**
 * The words of a text by rules R4 to R6 of DEVELOPERS.md, from `start` up to `end`. Places are those in the whole text; the text of a token is
 * without soft hyphens. Addresses of the web and paths of files are left out.
 */
export function tokensOf(text: string, start = 0, end = text.length): Token[] {
  const chunks = chunksOf(text, start, end)
  const tokens: Token[] = []
  for (let index = 0; index < chunks.length; ) {
    const chunk = chunks[index] as Chunk
    const after = index + 1
    const kind = kindOf(chunk.text, { dot: text[chunk.end] === '.', last: after === chunks.length })
    if (kind === 'number') {
      const number = endOfNumber(text, chunks, index)
      const last = endOfMeasure(text, chunks, number)
      tokens.push(tokenOf(text, chunk, chunks[last] as Chunk, last > number || /[%‰°]$/.test(chunk.text) ? 'measure' : 'number'))
      index = last + 1
    } else if (chunk.text.length === 1 && isInitials(text, chunks, index)) {
      tokens.push(tokenOf(text, chunk, chunks[after] as Chunk, 'abbreviation'))
      index += 2
    } else {
      if (kind !== undefined && !isTimesSign(chunks, index)) tokens.push(tokenOf(text, chunk, chunk, kind))
      index = after
    }
  }
  return tokens
}

function tokenOf(text: string, first: Chunk, last: Chunk, kind: Token['kind']): Token {
  const { start } = first
  return { start, end: last.end, text: first === last ? first.text : text.slice(start, last.end).replace(invisible, ''), kind }
}

function chunksOf(text: string, from: number, to: number): Chunk[] {
  const chunks: Chunk[] = []
  chunkPattern.lastIndex = from
  for (let match = chunkPattern.exec(text); match && match.index < to; match = chunkPattern.exec(text)) {
    const chunk = trimmed(text, match.index, Math.min(chunkPattern.lastIndex, to))
    if (chunk) chunks.push(chunk)
  }
  return chunks
}

/** A word of Latin letters with the marks that may follow it. */
const usual = /^([A-Za-zÀ-ÖØ-öø-ÿ]+)[.,;:!?)]*$/
const isEdge = (character: string) => !/[\p{L}\p{N}%‰°]/u.test(character)

function trimmed(text: string, from: number, to: number): Chunk | undefined {
  const whole = text.slice(from, to)
  const word = usual.exec(whole)?.[1]
  if (word !== undefined) return { from, to, start: from, end: from + word.length, text: word }
  const characters = [...whole]
  const first = characters.findIndex((character) => !isEdge(character))
  if (first < 0) return undefined
  const last = characters.findLastIndex((character) => !isEdge(character) || /[′″~]/.test(character))
  const before = characters.slice(0, first).join('')
  const core = characters.slice(first, last + 1).join('')
  // The slash of a path belongs to it, and so does the sign of a number or the aspect of a tag: -B12, =A1+K3, -5.
  const root = /[~.]{0,2}\/$/.exec(before.slice(-3))?.[0].length ?? 0
  const sign = /\d/.test(core) ? (/[-+=−]+$/.exec(before.slice(-3))?.[0].length ?? 0) : 0
  const start = from + before.length - root - sign
  const end = from + before.length + core.length
  return { from, to, start, end, text: text.slice(start, end).replace(invisible, '') }
}

/** Whether only a space stands between two chunks, and no punctuation. */
const adjoins = (left: Chunk, right: Chunk) => left.end === left.to && right.start === right.from

/** `1 450` with a space that does not break, `1 1/2`. */
function endOfNumber(text: string, chunks: readonly Chunk[], at: number): number {
  let last = at
  for (let next = chunks[last + 1]; next; next = chunks[last + 1]) {
    const now = chunks[last] as Chunk
    const grouped = /^\d{3}(?!\d)[.,]?\d*$/.test(next.text) && groupSpace.test(text.slice(now.to, next.from))
    const mixed = /^\d+$/.test(now.text) && /^\d+\/\d+$/.test(next.text)
    if (!(adjoins(now, next) || (next.start === next.from && now.end === now.to)) || !(grouped || mixed)) break
    last++
  }
  return last
}

function endOfMeasure(text: string, chunks: readonly Chunk[], at: number): number {
  const number = chunks[at] as Chunk
  const unit = chunks[at + 1]
  if (!unit || !adjoins(number, unit) || !isUnit(unit.text) || !isMeantAsUnit(text, number, unit)) return at
  const next = chunks[at + 2]
  const dotted = text[unit.end] === '.' && unit.end + 1 === unit.to
  const follows = next && (unit.end === unit.to || dotted) && next.start === next.from && continuesUnit(unit.text, next.text)
  return follows ? at + 2 : at + 1
}

/** `4 in the menu` is no measure; `0.24 in`, `1/2 in.` and `4 in)` are. */
function isMeantAsUnit(text: string, number: Chunk, unit: Chunk): boolean {
  if (unit.text !== 'in') return true
  return unit.end < unit.to || unit.to === text.length || /^\d*[.,]\d+$|\//.test(number.text)
}

/** The x of `M8 x 25` and `3 x 400 V` stands for ×, which is no word. */
function isTimesSign(chunks: readonly Chunk[], at: number): boolean {
  if (chunks[at]?.text !== 'x') return false
  return /\d$/.test(chunks[at - 1]?.text ?? '') && /^\d/.test(chunks[at + 1]?.text ?? '')
}

/** `z. B.`, `J. P.`: letters with dots, set apart. */
function isInitials(text: string, chunks: readonly Chunk[], at: number): boolean {
  const isInitial = (chunk: Chunk | undefined) => chunk?.text.length === 1 && /\p{L}/u.test(chunk.text) && text[chunk.end] === '.'
  return isInitial(chunks[at]) && isInitial(chunks[at + 1])
}
