import { fold, wordsOf } from './words.ts'

/** A stretch of the typed words that means the same as a wording of the pages. */
export interface Synonym {
  /** First typed word of the stretch, and the one after its last. */
  from: number
  to: number
  /** As typed. */
  typed: string
  /** The wording of the pages. */
  used: string
}

export interface Synonyms {
  /**
   * Every stretch of the typed words that has another wording; where they overlap, the first and longest.
   * The last word may be the mere beginning of a wording, unless the pages know a word that begins so.
   */
  find(typed: readonly string[], isKnown: (word: string) => boolean): Synonym[]
  /** Folded words of the other wordings. */
  words: string[]
}

/** Longest other wording in words: `variable frequency drive unit`. */
const mostWords = 4
/** From here on the beginning of one other wording stands for it: a reader may still be typing. */
const enoughLetters = 4

/**
 * Words are compared without spaces and hyphens: `photo eye`, `photo-eye` and `photoeye` are one.
 * @param groups the wording of the pages first
 */
export function synonymsOf(groups: readonly (readonly string[])[]): Synonyms {
  const wordings = new Map<string, string>()
  for (const [used = '', ...others] of groups)
    for (const other of others) {
      const key = wordsOf(other).join('')
      // The first group keeps a wording that two share; a term is never its own synonym.
      if (key !== '' && key !== wordsOf(used).join('') && !wordings.has(key)) wordings.set(key, used)
    }
  const keys = [...wordings.keys()]

  const wordingOf = (key: string): string | undefined => wordings.get(key) ?? (key.endsWith('s') ? wordings.get(key.slice(0, -1)) : undefined)
  const begunWording = (key: string): string | undefined => {
    if (key.length < enoughLetters) return undefined
    const begun = new Set(keys.filter((other) => other.startsWith(key)).map((other) => wordings.get(other)))
    return begun.size === 1 ? [...begun][0] : undefined
  }

  return {
    words: [...new Set(groups.flatMap(([, ...others]) => others.flatMap(wordsOf)))],
    find(typed, isKnown) {
      const found: Synonym[] = []
      for (let from = 0; from < typed.length; from++) {
        for (let to = Math.min(typed.length, from + mostWords); to > from; to--) {
          const stretch = typed.slice(from, to)
          const key = wordsOf(stretch.join(' ')).join('')
          const mayBeBegun = to === typed.length && !isKnown(fold(typed[to - 1] ?? ''))
          const used = wordingOf(key) ?? (mayBeBegun ? begunWording(key) : undefined)
          if (used === undefined) continue
          found.push({ from, to, typed: stretch.join(' '), used })
          from = to - 1
          break
        }
      }
      return found
    },
  }
}
