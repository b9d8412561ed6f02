import { remembered } from '../../source/once.ts'
import { type Designation, normalise, parseIec81346 } from '../designation.ts'
import { editDistance } from '../edit-distance.ts'
import { conductsOrJoins, namesCable } from './cables.ts'
import { type Named, otherNames } from './known-names.ts'
import { couldHoldNumber, dashes, looks, plainCharacters, unseen } from './look-alikes.ts'
import { isTradeWord } from './trade-words.ts'

/** A bare text that speaks of a device. Offsets are those of the text it was found in. */
export interface Mention {
  start: number
  end: number
  /** As written. */
  written: string
  /** `known`: the tag itself; `look-alike`: it only looks like it; `respelled`: other case or separators; `unknown`: the form of a tag, and none. */
  is: 'known' | 'look-alike' | 'respelled' | 'unknown'
  /** The device of a known tag. Absent where several devices share the text, or where it is a place or assembly that holds devices. */
  tag?: string | undefined
  /** How it should be written, where it is a look-alike or respelled. */
  meant?: string
}

export type ReadTags = (text: string) => Mention[]

/**
 * Prepares the search for bare tags in the designation system of a machine. A text has the form of a tag when
 * its letters and the width of its numbers are those of a tag in the machine's own list, or when it is one slip
 * away from such a tag; a word of the trade or another name of the machine has not.
 */
export function tagReader(machine: Named): ReadTags {
  const tags = [...machine.devices.map(({ tag }) => tag.value), ...namesAbsent(machine)].filter((tag) => /\p{L}/u.test(tag) && /\d/.test(tag))
  const spellings = spellingsOf(tags, machine.file.designation)
  const byLooks = unique(spellings, looks)
  const byKey = unique(spellings, normalise)
  const forms = new Set([...spellings.keys()].map(formOf))
  const signed = machine.file.designation === 'iec81346'
  const others = namesOfOthers(machine, signed)
  const find = (word: string): Omit<Mention, 'start' | 'end'> | undefined => {
    const own = signed ? canonical(word) : word
    if (spellings.has(own)) return { written: word, is: 'known', tag: spellings.get(own) }
    if (others.has(word.toUpperCase()) || others.has(own.toUpperCase())) return undefined
    if (!signed && (isTradeWord(word) || namesCable(word, spellings))) return undefined
    const bare = signed && !/^[=+#-]/.test(plainCharacters(word))
    const alike = byLooks.get(looks(word)) ?? (bare ? byLooks.get(looks(`-${word}`)) : undefined)
    // The sign of a product may be left out where nothing else is meant.
    if (bare && (alike === undefined || spellings.has(`-${word}`))) return undefined
    if (alike !== undefined) return { written: word, is: 'look-alike', meant: bare ? alike.slice(1) : alike }
    const meant = word.length > 2 ? byKey.get(normalise(word)) : undefined
    if (meant !== undefined) return { written: word, is: 'respelled', meant }
    if (forms.has(formOf(word))) return { written: word, is: 'unknown' }
    return !(signed && conductsOrJoins(word)) && isOneSlipFrom(spellings.keys(), word) ? { written: word, is: 'unknown' } : undefined
  }
  const look = remembered(find)
  const token = tokenPattern(tags)
  return (text) => (couldHoldNumber(text) ? [...text.matchAll(token)] : []).flatMap(({ 0: word, index }) => mentionsIn(word, index, look))
}

const namesAbsent = ({ absent }: Named) => [...absent.keys()].flatMap((name) => (name.startsWith('tag:') ? [name.slice(4)] : []))

/** Other names in upper case. A card `=A1+C1-KF11` stands as `-KF11` on the sheets of `=A1+C1`. */
function namesOfOthers(machine: Named, signed: boolean): Set<string> {
  const names = [...otherNames(machine)]
  return new Set([...names, ...(signed ? names.flatMap((name) => partsOf(name).map(({ text }) => text)) : [])].map((name) => name.toUpperCase()))
}

/** A name for each key that only one tag has. */
function unique(spellings: ReadonlyMap<string, unknown>, keyOf: (spelling: string) => string): Map<string, string> {
  const byKey = Map.groupBy(spellings.keys(), keyOf)
  return new Map([...byKey].flatMap(([key, [first, ...others]]) => (first !== undefined && others.length === 0 ? [[key, first] as const] : [])))
}

/** How a reader may write each tag, and which device that is; undefined where it is not one. */
function spellingsOf(tags: readonly string[], system: Designation): Map<string, string | undefined> {
  const spellings = new Map<string, string | undefined>()
  if (system === 'iec81346')
    for (const tag of tags)
      for (const { text, whole } of partsOf(tag)) {
        const shared = spellings.has(text) && spellings.get(text) !== tag
        spellings.set(text, whole && !shared ? tag : undefined)
      }
  for (const tag of tags) spellings.set(tag, tag)
  return spellings
}

/** Each end and each beginning of a designation: `=W1+C2-B12` is `-B12` on a page about `=W1+C2`, and stands in `+C2`. */
function partsOf(tag: string): { text: string; whole: boolean }[] {
  const read = parseIec81346(tag)
  if ('reason' in read) return []
  const aspects = read.aspects.map(({ prefix, parts }) => parts.map((_, n) => prefix + parts.slice(0, n + 1).join('.')))
  const last = aspects.at(-1)?.at(-1)
  const { prefix, parts } = read.aspects.at(-1) ?? { prefix: '', parts: [] }
  const alone = { text: prefix + (parts.at(-1) ?? ''), whole: true }
  const ends = aspects.flatMap((_, from) =>
    aspects.slice(from).flatMap((ends, n) => {
      const before = aspects.slice(from, from + n).map((parts) => parts.at(-1) ?? '')
      return ends.map((end) => ({ text: before.join('') + end, whole: from + n === aspects.length - 1 && end === last }))
    }),
  )
  return [...ends, alone]
}

/** `-A1-B2` and `-A1.B2` are one designation, and what follows `:` is a terminal of it. */
function canonical(word: string): string {
  const read = parseIec81346(word)
  return 'reason' in read ? word : read.aspects.map(({ prefix, parts }) => prefix + parts.join('.')).join('')
}

/** Letters as they are, each number by its width: `PRS204` is `PRS###`. After a sign any width will do: `-B104` is `-B#`. */
const formOf = (word: string) => word.replace(/^[=+#-].*/, (signed) => signed.replace(/\d+/g, '#')).replace(/\d/g, '#')

function isOneSlipFrom(tags: Iterable<string>, word: string): boolean {
  if (word.length < 4 || !/[A-Z]/.test(word) || !/\d/.test(word) || word !== word.toUpperCase()) return false
  for (const tag of tags) if (tag.length > 4 && editDistance(word, tag, 1) <= 1) return true
  return false
}

/** Letters and digits, with whatever stands between them in a tag or could be mistaken for it. */
function tokenPattern(tags: readonly string[]): RegExp {
  const others = new Set(tags.join('').replace(/[\p{L}\p{N}\s]/gu, ''))
  const signs = [...others].map((sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`).join('')
  const leading = [...new Set(tags.map((tag) => tag.charAt(0)))].some((first) => /[^\p{L}\p{N}]/u.test(first)) ? `[-${dashes}${signs}]{0,2}` : ''
  const joint = `[-${dashes}${unseen}${signs}]{1,2}|(?<=[^\\p{L}\\p{N}]\\p{Lu}{1,4}|^\\p{Lu}{1,4}) (?=\\d)`
  return new RegExp(
    `(?<![\\p{L}\\p{N}_%@\\\\.])${leading}[\\p{L}\\p{N}]+(?:(?:${joint})[\\p{L}\\p{N}]+)*(?![\\p{L}\\p{N}_@\\\\]|\\.[\\p{L}\\p{N}])`,
    'gu',
  )
}

/** A digit, or letters that look like one among capitals. */
const couldBeTag = (word: string) =>
  word.length <= 60 && /\p{L}/u.test(word) && (/\d/.test(word) || (/[OolI]/.test(word) && /^[\P{Ll}ol]+$/u.test(word)))

/** The word as a whole, or else the longest beginning of it that a device has, and then the rest. */
function mentionsIn(word: string, at: number, look: (word: string) => Omit<Mention, 'start' | 'end'> | undefined): Mention[] {
  if (!couldBeTag(word)) return []
  const ends = [...word.matchAll(/(?<=[\p{L}\p{N}])(?=[^\p{L}\p{N}]|$)/gu)].map(({ index }) => index).reverse()
  for (const end of ends) {
    const found = look(word.slice(0, end))
    if (!found || (found.is === 'unknown' && end < word.length)) continue
    const rest = /^[^\p{L}\p{N}]*/u.exec(word.slice(end))?.[0].length ?? 0
    return [{ ...found, start: at, end: at + end }, ...mentionsIn(word.slice(end + rest), at + end + rest, look)]
  }
  const next = ends.at(-1)
  if (next === undefined || next === word.length) return []
  const gap = /^[^\p{L}\p{N}]*/u.exec(word.slice(next))?.[0].length ?? 0
  return [...mentionsIn(word.slice(0, next), at, look), ...mentionsIn(word.slice(next + gap), at + next + gap, look)]
}
