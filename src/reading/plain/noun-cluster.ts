import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, type Word } from './sentence-view.ts'
import { determiners } from './words/english.ts'
import { nouns, singularInS } from './words/english-nouns.ts'
import { nounVerbs, pureVerbs } from './words/english-verbs.ts'

/** Nouns in a row that a reader can still take apart. Source: ASD-STE100 Issue 9, rule 2.1. */
export const clusterLimit = 3

/** Names of the machine's parts and terms of its glossary, each counted as one word, by the word that they begin with. */
export type MachineWords = ReadonlyMap<string, NamesAlike>

/** Names that begin alike. Machines have many devices alike, so a name is looked up and not sought in a list. */
interface NamesAlike {
  names: Set<string>
  /** How many words they have, the most first. */
  lengths: number[]
}

export function machineWordsOf(names: Iterable<string>): MachineWords {
  const byFirst = new Map<string, NamesAlike>()
  for (const name of names) {
    const words = name.toLowerCase().split(/\s+/).filter(Boolean)
    const [first] = words
    if (first === undefined || words.length < 2) continue
    const alike = byFirst.get(first) ?? { names: new Set(), lengths: [] }
    byFirst.set(first, alike)
    alike.names.add(words.join('\0'))
    if (!alike.lengths.includes(words.length)) alike.lengths.push(words.length)
  }
  for (const { lengths } of byFirst.values()) lengths.sort((a, b) => b - a)
  return byFirst
}

/** More than three nouns in a row, where each is known to be one. Verbs, adjectives and other words part them. */
export function nounClusters(view: SentenceView, machineWords: MachineWords = new Map()): PlainFinding[] {
  if (view.language !== 'en') return []
  const { words } = view
  const found: PlainFinding[] = []
  for (let at = 0; at < words.length; ) {
    const { to, count } = clusterFrom(words, at, machineWords)
    const [first, last] = [words[at], words[to - 1]]
    if (count > clusterLimit && first && last)
      found.push(findingAt(view, 'noun-cluster', { start: first.start, end: last.end }, { count: { is: count, limit: clusterLimit } }))
    at = Math.max(to, at + 1)
  }
  return found
}

/** The row of nouns that begins at a word, and how many it has; a name of the machine is one. */
function clusterFrom(words: readonly Word[], from: number, machineWords: MachineWords): { to: number; count: number } {
  let count = 0
  let at = from
  while (at < words.length) {
    const word = words[at]
    if (!word || (at > from && word.gap !== ' ' && !/^\s+$/.test(word.gap))) break
    const name = nameAt(words, at, machineWords)
    if ((name === 0 && !isNoun(word)) || (at === from && canBeVerb(words, at))) break
    at += Math.max(name, 1)
    count++
    if (name === 0 && isPlural(word)) break
  }
  return { to: at, count }
}

/** How many words the longest name has that stands here; 0 where none does. */
function nameAt(words: readonly Word[], at: number, machineWords: MachineWords): number {
  if (machineWords.size === 0) return 0
  const alike = machineWords.get(words[at]?.lower ?? '')
  if (!alike) return 0
  const nameOf = (length: number) =>
    words
      .slice(at, at + length)
      .map(({ lower }) => lower)
      .join('\0')
  return alike.lengths.find((length) => at + length <= words.length && alike.names.has(nameOf(length))) ?? 0
}

const isPlural = ({ lower }: Word) => lower.endsWith('s') && !singularInS.has(lower)

function isNoun({ kind, lower, quoted }: Word): boolean {
  if (kind !== 'word' || quoted) return false
  if (nouns.has(lower)) return true
  const hyphen = lower.lastIndexOf('-')
  const last = hyphen === -1 ? lower : lower.slice(hyphen + 1)
  if (hyphen !== -1 && nouns.has(last)) return true
  return last.endsWith('s') && (nouns.has(last.slice(0, -1)) || nouns.has(last.slice(0, -2)) || nouns.has(last.replace(/ies$/, 'y')))
}

/** Behind these a verb follows: "to pump", "and drain", "they seal". */
const beforeVerb = new Set([
  'to',
  'not',
  'and',
  'or',
  'then',
  'must',
  'can',
  'may',
  'will',
  'should',
  'you',
  'they',
  'we',
  'that',
  'which',
  'never',
  'always',
  'then',
])

/** A word at the beginning of a sentence or clause, or behind "to", that can be a verb is taken for one. */
function canBeVerb(words: readonly Word[], at: number): boolean {
  const word = words[at]
  if (!word || !(nounVerbs.has(word.lower) || pureVerbs.has(word.lower))) return false
  const before = words[at - 1]
  return at === 0 || /[,:;–—]/.test(word.gap) || (before !== undefined && !determiners.has(before.lower) && beforeVerb.has(before.lower))
}
