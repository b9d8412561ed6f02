import type { Block, Sentence } from '../block.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, viewOf, type Word } from './sentence-view.ts'
import { capitalWords } from './words/common-abbreviations.ts'

/** A block of a page with its sentences. */
export interface ReadBlock<B extends Block = Block> {
  block: B
  sentences: readonly Sentence[]
}

const twoCapitals = /\p{Lu}{2}/u

/**
 * Abbreviations of a page that it never gives in words, each at its first use, with its block.
 * `known`: those that the reader knows, and those that the glossary explains, without dots.
 */
export function unexpanded<B extends Block>(page: readonly ReadBlock<B>[], known: ReadonlySet<string>): { block: B; finding: PlainFinding }[] {
  const firstUse = new Map<string, { block: B; finding: PlainFinding }>()
  for (const { block, sentences } of page)
    for (const sentence of sentences) {
      if (!twoCapitals.test(sentence.text)) continue
      const { words } = viewOf(sentence, block, '')
      if (isInCapitals(words)) continue
      for (const [index, word] of words.entries()) {
        const form = isNamed(word, words[index + 1]) ? undefined : formOf(word)
        if (form !== undefined && !firstUse.has(form) && !known.has(form))
          firstUse.set(form, { block, finding: findingAt({ block }, 'unexpanded-abbreviation', word) })
      }
    }
  if (firstUse.size === 0) return []
  const expanded = expandedIn(page, new Set(firstUse.keys()))
  return [...firstUse].flatMap(([form, use]) => (expanded.has(form) ? [] : [use]))
}

/** The abbreviation that a word is, without its plural; nothing for a label, a word in capitals, a Roman numeral. */
function formOf({ text, kind, quoted }: Word): string | undefined {
  if (quoted || (kind !== 'abbreviation' && kind !== 'word')) return undefined
  const [, form] = /^(\p{Lu}{2,6})s?$/u.exec(text) ?? []
  return form === undefined || capitalWords.has(form) || /^[IVX]+$/.test(form) ? undefined : form
}

/** With a number behind it, it is part of a name: "IEC 60751", "29 CFR 1910". */
const isNamed = ({ end }: Word, next: Word | undefined) => next !== undefined && /^\d/.test(next.text) && next.start === end + 1

/** A sentence in capitals holds words and no abbreviations. */
function isInCapitals(words: readonly Word[]): boolean {
  const read = words.filter(({ kind, text }) => (kind === 'word' || kind === 'abbreviation') && text.length > 1)
  return read.length > 1 && read.filter(({ text }) => text === text.toUpperCase()).length > read.length / 2
}

/** The abbreviations that stand somewhere beside words with their first letters: "residual-current device (RCD)", "RCD (residual-current device)". */
function expandedIn(page: readonly ReadBlock[], forms: ReadonlySet<string>): Set<string> {
  const found = new Set<string>()
  for (const { block } of page)
    for (const form of forms) {
      if (found.has(form)) continue
      for (let at = block.text.indexOf(form); at !== -1; at = block.text.indexOf(form, at + 1))
        if (isExpandedAt(block.text, at, form)) found.add(form)
    }
  return found
}

function isExpandedAt(text: string, at: number, form: string): boolean {
  const before = text.slice(Math.max(0, at - 120), at)
  const after = text.slice(at + form.length, at + form.length + 120)
  if (/[([]\s*$/.test(before) && /^s?[)\],;]/.test(after)) return spells(before.replace(/[([]\s*$/, ''), form, 'end')
  const [, inside] = /^s?\s*[([]([^)\]]*)[)\]]/.exec(after) ?? []
  if (inside !== undefined) return spells(inside, form, 'start')
  const [, told] = /^s?,?\s+(?:stands for|means|is short for|significa)\s+(.*)/i.exec(after) ?? []
  return told !== undefined
}

/** Whether words with the letters of the form, in order, stand at that end of the text. Small words may be left out. */
function spells(text: string, form: string, side: 'start' | 'end'): boolean {
  const parts = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []
  const near = side === 'end' ? parts.slice(-2 * form.length - 2) : parts.slice(0, 2 * form.length + 2)
  const [first = '', ...rest] = form.toLowerCase()
  return near.some((part, index) => part.startsWith(first) && rest.length > 0 && follows(near.slice(index).join(' '), first + rest.join('')))
}

/** Whether the letters stand in the text in order, the first at its beginning; each letter begins a word or stands in the word begun. */
function follows(text: string, letters: string): boolean {
  let at = 0
  for (const letter of letters) {
    const found = text.indexOf(letter, at)
    if (found === -1) return false
    at = found + 1
  }
  return true
}
