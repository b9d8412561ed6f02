import type { SearchKind, Terms } from './entry.ts'
import { isFiller } from './filler-words.ts'
import { findNames, type Matches, type Name, nameOf, squash } from './ident.ts'
import { inOneWord, kindAskedBy } from './kind-words.ts'
import type { SearchNote } from './result.ts'
import { type Synonyms, synonymsOf } from './synonyms.ts'
import { fold, type Vocabulary, vocabularyOf } from './words.ts'

/** The exact index, ready to be asked. */
export interface TermsIndex {
  language: string
  names: Name[]
  vocabulary: Vocabulary
  synonyms: Synonyms
}

/** A text to look for in the pages. All of its words must be on a page: there is no OR, so each wording is a search. */
export interface TextSearch {
  text: string
  /** Counts the score of its pages down where it is not quite what was typed. */
  weight: number
}

export interface Plan {
  names: Matches
  /** At most four, the likeliest first. */
  searches: TextSearch[]
  notes: SearchNote[]
  /** Kinds that the reader named: `alarm 217`. */
  asked: ReadonlySet<SearchKind>
}

const mostSearches = 4
/** A wording that was not typed as it is, or lacks a typed word, counts a little less. */
const lesser = 0.8

export function indexTerms(terms: Terms, language: string): TermsIndex {
  const synonyms = synonymsOf(terms.synonyms)
  return { language, names: terms.entries.map(nameOf), vocabulary: vocabularyOf(terms.words, terms.counts, synonyms.words), synonyms }
}

/** What to look for when this was typed. */
export function planQuery(index: TermsIndex, query: string): Plan {
  const typed = inOneWord(
    query.split(/\s+/).filter((word) => squash(word) !== ''),
    index.language,
  )
  const kinds = typed.map((word) => kindAskedBy(word, index.language))
  const names = findNames(index.names, typed, kinds)
  const { words, notes } = correctWords(index, nameInFull(typed, kinds, names))
  const plain = words.map(({ text }) => text)

  const synonyms = index.synonyms.find(plain, index.vocabulary.knows)
  notes.push(...synonyms.map(({ typed, used }): SearchNote => ({ kind: 'synonym', typed, used })))
  const inUse = words.flatMap((word, position) => {
    const synonym = synonyms.find(({ from, to }) => position >= from && position < to)
    if (!synonym) return [word]
    return position === synonym.from ? [{ text: synonym.used, kind: word.kind, isName: false }] : []
  })

  const wordings = synonyms.length > 0 ? [inUse] : []
  if (synonyms.length === 0 || plain.every((word) => isOnPages(index, word))) wordings.push(words)
  const searches = wordings.flatMap((wording, position) => {
    const weight = position === 0 ? 1 : lesser
    const withoutKinds = wording.filter(({ kind }) => kind === undefined)
    return [
      { text: searchable(wording, index.language), weight },
      { text: searchable(withoutKinds, index.language), weight: weight * lesser },
    ]
  })
  const asked = new Set(kinds.filter((kind) => kind !== undefined))
  return { names, searches: firstOfEach(searches).slice(0, mostSearches), notes, asked }
}

interface TypedWord {
  text: string
  /** It is a name of the exact index, or the beginning of one. */
  isName: boolean
  /** The kind of thing that the word asks for. */
  kind: SearchKind | undefined
}

/** A definite name is written in full, so that pages which mention it are found: `alarm 217` becomes `alarm a0217`. */
function nameInFull(typed: readonly string[], kinds: readonly (SearchKind | undefined)[], { found: [best], definite }: Matches): TypedWord[] {
  const isName = (index: number) => best !== undefined && index >= best.from && index < best.to
  const words = typed.map((text, index) => ({ text, kind: kinds[index], isName: isName(index) }))
  if (!definite) return words
  const name = { text: squash(definite.entry.id).toLowerCase(), kind: undefined, isName: true }
  return [...words.slice(0, definite.from), name, ...words.slice(definite.to)]
}

/** Left alone, a word that no page has would be answered with pages that begin like it. */
function correctWords(index: TermsIndex, typed: readonly TypedWord[]): { words: TypedWord[]; notes: SearchNote[] } {
  const { vocabulary, synonyms } = index
  const notes: SearchNote[] = []
  const found = synonyms.find(
    typed.map(({ text }) => text),
    vocabulary.knows,
  )
  const words = typed.flatMap((word, position): TypedWord[] => {
    if (
      word.isName ||
      isFiller(word.text, index.language) ||
      isOnPages(index, word.text) ||
      found.some(({ from, to }) => position >= from && position < to)
    )
      return [word]
    // What says only the kind has done its work, whether or not the pages have the word.
    if (word.kind !== undefined) return []
    const folded = fold(word.text)
    const used = vocabulary.correct(folded)
    const typed = word.text.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '')
    if (used === undefined || used === folded) {
      notes.push({ kind: 'unknown', typed })
      return []
    }
    // Another ending of the word, such as a plural, is no slip.
    if (!(folded.startsWith(used) && folded.length - used.length <= 2)) notes.push({ kind: 'spelling', typed, used })
    return [{ text: used, kind: kindAskedBy(used, index.language), isName: false }]
  })
  return { words, notes }
}

/** Only words of letters are judged: whether a page has a number, the engine sees in its text. */
function isOnPages({ vocabulary }: TermsIndex, word: string): boolean {
  const folded = fold(word)
  return !/^\p{L}+$/u.test(folded) || vocabulary.knows(folded)
}

/** Pagefind keeps `=` and `+` in what is searched and drops them from what is indexed. */
function searchable(words: readonly TypedWord[], language: string): string {
  const all = words.flatMap(({ text }) => text.split(/\s+/)).map((word) => word.replace(/[^\p{L}\p{M}\p{N}_]+/gu, ''))
  const telling = all.filter((word) => !isFiller(word, language))
  return (telling.some((word) => word !== '') ? telling : all).filter((word) => word !== '').join(' ')
}

function firstOfEach(searches: readonly TextSearch[]): TextSearch[] {
  return searches.filter(({ text }, index) => isEnough(text) && searches.findIndex((other) => other.text === text) === index)
}

/** One Latin letter or digit would find nearly every page. */
function isEnough(text: string): boolean {
  return text !== '' && !/^[\p{Script=Latin}\d]$/u.test(text)
}
