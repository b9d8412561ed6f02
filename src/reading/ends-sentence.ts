import type { Span } from './block.ts'
import type { Abbreviations } from './language/abbreviations.ts'

// An apostrophe is part of a word (`doesn't`), a quotation mark at its start is not.
const wordBefore = /(?<![^\s"'“”‘’«»()[\]])[^\s"'“”‘’«»()[\]][^\s"“”«»()[\]]*$/
const nextWord = /[\p{L}\p{N}'’-]+/uy

/** Whether the end mark at `mark` (with closing quotes and brackets) ends the sentence that starts at `start`. */
export function endsSentence(text: string, start: number, mark: Span, abbreviations: Abbreviations): boolean {
  const rest = text.slice(mark.end, mark.end + 40).trimStart()
  if (rest === '') return true
  const sign = text.slice(mark.start, mark.end)
  const isLower = /^\p{Ll}/u.test(rest)
  // `"Is the lamp on?" the display asks`, `(approx. 20 min.) and`
  if (/["'”’»)\]]/.test(sign) && (isLower || /^[,;:]/.test(rest))) return false
  if (/^(?:\.{2,}|…)/.test(sign)) return !isLower
  if (sign[0] !== '.') return true
  const before = text.slice(Math.max(start, mark.start - 60), mark.start)
  const word = wordBefore.exec(before)?.[0] ?? ''
  const previous = wordBefore.exec(before.slice(0, before.length - word.length).trimEnd())?.[0].replace(/[.,;:]$/, '') ?? ''
  return endsAfter({ word, previous, rest, isLower }, abbreviations)
}

interface Dot {
  /** The word with the dot, and the one before it. */
  word: string
  previous: string
  /** What follows, without space at its start. */
  rest: string
  isLower: boolean
}

function endsAfter(dot: Dot, abbreviations: Abbreviations): boolean {
  const { word, rest, isLower } = dot
  const key = keyOf(word)
  nextWord.lastIndex = 0
  const next = nextWord.exec(rest)?.[0] ?? ''
  if (/^\p{L}$/u.test(key)) return endsAfterLetter(dot, next, abbreviations)
  if (/^\d{1,2}$/.test(word) && abbreviations.beforeOrdinal.has(dot.previous.toLowerCase())) return false
  if (abbreviations.never.has(key)) return false
  if (abbreviations.ofNames.has(key)) return abbreviations.starters.has(next.toLowerCase()) && !isLower
  if (abbreviations.announcing.has(key)) return !isAnnounced(rest, next)
  if (abbreviations.beforeCapital.has(key) || isDotted(key)) return startsWithCapital(rest)
  // A word without a vowel is an abbreviation that no list holds.
  if (/^[b-df-hj-np-tv-xz]{2,}$/.test(word)) return !isLower
  return true
}

/** `rev./min` → `min`, `Teile-Nr` → `nr`. */
const keyOf = (word: string) => word.toLowerCase().replace(/^.*[/]|^.*-(?=nr$|no$)/, '')

const isDotted = (key: string) => /^\p{L}{1,2}(?:\.\p{L}{1,2})+$/u.test(key)

const startsWithCapital = (rest: string) => /^["“‘«([]?\p{Lu}/u.test(rest)

/** What `Fig.` or `no.` speaks of: a number, a bracket, a letter, a Roman numeral, a word in lower case. */
const isAnnounced = (rest: string, next: string) => !startsWithCapital(rest) || /^(?:\p{L}|[IVX]+)$/u.test(next) || /\d/.test(next)

/** A letter alone is an initial (`J. P. Weber`, `u. Co.`), a unit after a number, or the name of a thing (`Zone A`). */
function endsAfterLetter({ word, previous, rest, isLower }: Dot, next: string, { labels, starters }: Abbreviations): boolean {
  if (/\d$/.test(previous)) return startsWithCapital(rest)
  if (isLower) return false
  if (labels.has(previous.toLowerCase())) return true
  if (/^\p{L}$/u.test(next) && rest[1] === '.') return false
  return /^\p{Lu}/u.test(word) && starters.has(next.toLowerCase())
}
