import { normalise } from '../model/designation.ts'
import { editDistance } from '../model/edit-distance.ts'
import type { SearchEntry, SearchKind } from './entry.ts'

/**
 * How well typed text names a thing, best first. The order was measured on typed forms of tags, alarms and parts;
 * 84 and more name one thing, less name a group of them.
 */
const tier = {
  /** Equal but for separators and case: `px-104`. */
  same: 100,
  /** Equal as check and suggestions compare names, without leading zeros: `KF 231` for `KF-0231`. */
  normal: 95,
  /** The end, from a separator on: `-B12` for `=S1+C2-B12`, `225003` for `7410-2250-03`. */
  end: 90,
  /** The only number in it: `217` for `A0217`, `104` for `E-104`. */
  number: 85,
  /** A whole piece between separators: `2250`. */
  piece: 84,
  beginning: 80,
  /** The beginning, without leading zeros: `KF 2` for `KF-0231`. */
  normalBeginning: 78,
  /** The beginning of an end: `B1` for `=S1+C2-B12`. */
  beginningOfEnd: 75,
  inside: 60,
  /** One letter or digit off. Only when nothing else fits. */
  near: 40,
} as const

const sure = tier.piece
/** Lifts the kind that was asked for above any other match. */
const askedFor = 30
/** A bare number is oftener that of an alarm, read off a screen, than another; yet it names all things that have it. */
const bareAlarm = 0.4

/** A thing in the forms that are compared. */
export interface Name {
  entry: SearchEntry
  squashed: string
  normal: string
  pieces: string[]
  ends: string[]
  numbers: string[]
}

export interface Match {
  entry: SearchEntry
  tier: number
  /** It is the thing itself, not only one of those whose name begins like this. */
  sure: boolean
  /** First typed word of the name, and the one after its last. */
  from: number
  to: number
}

export interface Matches {
  /** Best first. */
  found: Match[]
  /** The first of them, where the words name it and nothing else as well. */
  definite: Match | undefined
  /** Nothing had this name; what was found is one letter or digit off. */
  near: boolean
}

/** Upper case without accents and separators: `px-104` is `PX104`. */
export function squash(text: string): string {
  return text
    .normalize('NFKD')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
}

export function nameOf(entry: SearchEntry): Name {
  const pieces = entry.id.split(/[^\p{L}\p{N}]+/u).flatMap((piece) => (piece === '' ? [] : [squash(piece)]))
  const squashed = squash(entry.id)
  const [number, ...others] = squashed.match(/\d+/g) ?? []
  return {
    entry,
    squashed,
    normal: squash(normalise(entry.id)),
    pieces,
    ends: pieces.map((_, index) => pieces.slice(index).join('')).slice(1),
    numbers: number !== undefined && others.length === 0 ? [number, number.replace(/^0+(?=.)/, '')] : [],
  }
}

/**
 * Finds the things that typed words name, alone or joined (`PX 104`), best first.
 * @param kindWords for each typed word, the kind that it asks for
 */
export function findNames(names: readonly Name[], typed: readonly string[], kindWords: readonly (SearchKind | undefined)[]): Matches {
  const asked = new Set(kindWords.filter((kind) => kind !== undefined))
  const stretches = stretchesOf(typed, kindWords)
  const best = new Map<Name, Match & { score: number }>()
  for (const stretch of stretches) {
    for (const name of names) {
      const value = tierOf(name, stretch)
      const lift = (asked.has(name.entry.kind) ? askedFor : 0) + (value === tier.number && name.entry.kind === 'alarm' ? bareAlarm : 0)
      const score = value + (stretch.to - stretch.from) * 0.5 + lift
      if (value > 0 && score > (best.get(name)?.score ?? 0))
        best.set(name, { entry: name.entry, tier: value, sure: value >= sure, from: stretch.from, to: stretch.to, score })
    }
  }
  for (const match of wordNames(names, typed, kindWords)) best.set(match.name, match)
  if (best.size === 0) return { found: nearNames(names, stretches), definite: undefined, near: true }
  const ranked = [...best].sort(([a, first], [b, second]) => second.score - first.score || shorterFirst(a, b)).map(([, match]) => match)
  const [first] = ranked
  if (!first?.sure) return { found: ranked, definite: undefined, near: false }
  const found = ranked.filter((match) => standsBeside(match, first, asked))
  const [, second] = found
  return { found, definite: second && first.score - second.score < 1 ? undefined : first, near: false }
}

/**
 * A name that was typed whole hides names that only contain the text somewhere, that a part of its own words
 * names (`104` of `PRS 104`), or that are of another kind than the one asked for.
 */
function standsBeside(match: Match, definite: Match, asked: ReadonlySet<SearchKind>): boolean {
  if (asked.has(definite.entry.kind) && !asked.has(match.entry.kind)) return false
  const isPart = match.from >= definite.from && match.to <= definite.to && match.to - match.from < definite.to - definite.from
  return match.tier >= tier.beginningOfEnd && !isPart
}

/**
 * Hazards have words for names. All that was typed, without words that say the kind, must be one, or its beginning:
 * the same words stand on many pages, and those are found by their text.
 */
function wordNames(names: readonly Name[], typed: readonly string[], kindWords: readonly (SearchKind | undefined)[]) {
  const words = squash(typed.filter((_, index) => kindWords[index] === undefined).join(''))
  if (words.length < 4) return []
  return names
    .filter(({ entry }) => entry.kind === 'hazard')
    .flatMap((name) => {
      const own = [name.squashed, squash(name.entry.title)]
      const value = own.includes(words) ? tier.same : own.some((it) => it.startsWith(words)) ? tier.beginning : 0
      return value === 0 ? [] : [{ name, entry: name.entry, tier: value, sure: value >= sure, from: 0, to: typed.length, score: value }]
    })
}

interface Stretch {
  squashed: string
  normal: string
  from: number
  to: number
  /** All that was typed, but for words that say the kind. */
  whole: boolean
}

/** Neighbouring words that may together be one name, each in the forms that are compared. */
function stretchesOf(typed: readonly string[], kindWords: readonly (SearchKind | undefined)[]): Stretch[] {
  const stretches = new Map<string, Stretch>()
  for (let from = 0; from < typed.length; from++) {
    for (let to = typed.length; to > from; to--) {
      const words = typed.slice(from, to)
      const squashed = squash(words.join(''))
      const whole = kindWords.every((kind, index) => kind !== undefined || (index >= from && index < to))
      if (mayBeName(words, squashed, whole, typed.length))
        stretches.set(squashed, { squashed, normal: squash(normalise(words.join(' '))), from, to, whole })
    }
  }
  return [...stretches.values()]
}

function mayBeName(words: readonly string[], squashed: string, whole: boolean, typedCount: number): boolean {
  // Letters alone: the beginning of a series, `PX` or `KF-`.
  if (!/\d/.test(squashed)) return whole && words.length === 1 && /^\p{L}{2,4}$/u.test(squashed)
  const joinable = words.length === 1 || words.every((word) => /\d/.test(word) || /^\p{L}{1,4}$/u.test(squash(word)))
  // One digit is too little, unless the kind is said: `alarm 1`.
  return joinable && (squashed.length > 1 || (whole && words.length < typedCount))
}

function tierOf(name: Name, { squashed, normal, whole }: Stretch): number {
  const value = closeness(name, squashed, normal)
  if (whole || value >= sure) return value
  // Among other words a bare number is rather a quantity (`24 V`), and a loose find is noise.
  return value < tier.beginningOfEnd || /^\d+$/.test(squashed) ? 0 : value
}

function closeness({ squashed, normal, ends, numbers, pieces }: Name, typed: string, typedNormal: string): number {
  if (squashed === typed) return tier.same
  if (normal === typedNormal) return tier.normal
  if (numbers.includes(typed)) return tier.number
  if (ends.includes(typed)) return tier.end
  if (typed.length > 2 && pieces.includes(typed)) return tier.piece
  if (typed.length === 1) return 0
  if (squashed.startsWith(typed)) return tier.beginning
  if (!/\d/.test(typed)) return 0
  if (typedNormal.length > 1 && /[1-9]/.test(typedNormal) && normal.startsWith(typedNormal)) return tier.normalBeginning
  if (ends.some((end) => end.startsWith(typed))) return tier.beginningOfEnd
  return typed.length > 2 && squashed.includes(typed) ? tier.inside : 0
}

function nearNames(names: readonly Name[], stretches: readonly Stretch[]): Match[] {
  const found = stretches
    .filter(({ squashed }) => squashed.length >= 4)
    .flatMap(({ squashed, from, to }) =>
      names.filter(({ entry, squashed: own }) => entry.kind !== 'hazard' && editDistance(own, squashed, 1) <= 1).map((name) => ({ name, from, to })),
    )
  found.sort((a, b) => shorterFirst(a.name, b.name))
  const entries = new Set<SearchEntry>()
  return found.flatMap(({ name: { entry }, from, to }) => {
    if (entries.has(entry)) return []
    entries.add(entry)
    return [{ entry, tier: tier.near, sure: false, from, to }]
  })
}

function shorterFirst(a: Name, b: Name): number {
  return a.squashed.length - b.squashed.length || (a.squashed < b.squashed ? -1 : 1)
}
