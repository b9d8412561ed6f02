import type { KindWords } from './kind-words.ts'

/** What a text calls a device that it names, at its offsets in the text. */
export interface KindClaim {
  /** The kind as it is known: lower case, one of it. */
  kind: string
  start: number
  end: number
}

const article = 'the|a|an|this|that|each|every|its|el|la|los|las|un|una|del|al|este|esta|cada'
const isArticle = new RegExp(`^(?:${article})$`, 'i')
const lastWord = /[\p{L}\p{N}./-]+$/u
const inBrackets = new RegExp(`^ ?\\((?:(?:${article}) )?([\\p{L}\\p{N}./ -]+)\\)`, 'iu')
const said = /^ (?:is an?|es una?) ([\p{L}\p{N}./ -]+)/iu

/**
 * The kind that a sentence gives a device: the longest name of a kind directly before the tag, in brackets after
 * it, or after `is a`. One word alone needs an article before it: in `to drive MTR101` a drive is a verb.
 */
export function kindClaim(written: string, tag: { start: number; end: number }, words: KindWords): KindClaim | undefined {
  const { spoken, end } = wordsBefore(written.slice(Math.max(0, tag.start - 120), tag.start), tag.start)
  for (let from = 0; from < spoken.length; from++) {
    const name = spoken.slice(from).join(' ')
    const kind = oneOf(name, words)
    if (kind === undefined) continue
    if (from === spoken.length - 1 && !isArticle.test(spoken[from - 1] ?? '')) continue
    return { kind, start: end - name.length, end }
  }
  const rest = written.slice(tag.end, tag.end + 120).replace(/\s/g, ' ')
  const bracketed = inBrackets.exec(rest)
  const whole = bracketed?.[1] === undefined ? undefined : oneOf(bracketed[1], words)
  if (bracketed?.[1] !== undefined && whole !== undefined) return at(tag.end + bracketed[0].length - 1 - bracketed[1].length, bracketed[1], whole)
  const sentence = said.exec(rest)
  const named = sentence?.[1]?.split(' ') ?? []
  for (let count = Math.min(5, named.length); count > 0; count--) {
    const name = named.slice(0, count).join(' ').replace(/\.$/, '')
    const kind = oneOf(name, words)
    if (kind !== undefined) return at(tag.end + (sentence?.[0].length ?? 0) - (sentence?.[1]?.length ?? 0), name, kind)
  }
  return undefined
}

/** The words, at most five, that directly precede an offset, and where the last of them ends. A bracket or quote may open behind them. */
function wordsBefore(lead: string, offset: number): { spoken: string[]; end: number } {
  const opened = /[("“«]$/.test(lead) ? lead.slice(0, -1) : lead
  const spoken: string[] = []
  if (!/\s$/.test(opened)) return { spoken, end: offset }
  for (const written of opened.slice(0, -1).split(/\s/).reverse()) {
    const own = lastWord.exec(written)?.[0] ?? ''
    if (own !== '') spoken.unshift(own)
    if (own !== written || own === '' || spoken.length === 5) break
  }
  return { spoken, end: offset - (lead.length - opened.length) - 1 }
}

const at = (start: number, written: string, kind: string): KindClaim => ({ kind, start, end: start + written.length })

/** A kind as it is known, for one or several of it. */
function oneOf(written: string, words: KindWords): string | undefined {
  const lower = written.toLowerCase()
  return [lower, lower.replace(/s$/, ''), lower.replace(/es$/, '')].find((it) => words.isKind(it))
}
