import { editDistance } from '../model/edit-distance.ts'

/** A word as the text index keeps it: lower case, without accents, letters and digits only. */
export function fold(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
}

/** The folded words of a text. Anything but letters and digits parts words, hyphens too. */
export function wordsOf(text: string): string[] {
  return text
    .normalize('NFC')
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .map(fold)
    .filter((word) => word !== '')
}

export interface Vocabulary {
  /** Whether a word of the pages is or begins with this one: a reader may still be typing. */
  knows(word: string): boolean
  /** The word that was probably meant; undefined when none is near enough. */
  correct(word: string): string | undefined
}

/**
 * @param words folded, in code-unit order
 * @param counts a digit for each word, see `Terms`
 * @param others folded words that are no words of the pages but lead to them, such as synonyms
 */
export function vocabularyOf(words: readonly string[], counts: string, others: readonly string[]): Vocabulary {
  const targets = words.map((word, index) => ({ word, rank: Number(counts[index]) })).concat(others.map((word) => ({ word, rank: 1 })))
  return {
    knows(word) {
      let low = 0
      let high = words.length
      while (low < high) {
        const middle = (low + high) >> 1
        if ((words[middle] ?? '') < word) low = middle + 1
        else high = middle
      }
      return words[low]?.startsWith(word) ?? false
    },
    correct(word) {
      const most = mostEdits(word)
      let best: string | undefined
      let bestScore = 0
      for (const { word: target, rank } of most === 0 ? [] : targets) {
        const edits = editDistance(word, target, most)
        // A word of one page may be rare or may be a slip itself: it has to be very near.
        if (edits > most || (rank === 0 && edits > 1)) continue
        const score = (most + 1 - edits) * 10 + rank + (target[0] === word[0] ? 3 : 0)
        if (score > bestScore) {
          bestScore = score
          best = target
        }
      }
      return best
    },
  }
}

/** Short words differ by one letter from too many others to be corrected. */
function mostEdits(word: string): number {
  return word.length >= 6 ? 2 : word.length >= 4 ? 1 : 0
}
