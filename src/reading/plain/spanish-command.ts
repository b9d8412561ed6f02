import { afterComma, stretchesOf } from './clauses.ts'
import type { Command } from './english-command.ts'
import type { Word } from './sentence-view.ts'
import { articles, functionWords, imperatives, leadIns, nounsLikeInfinitives, subordinators } from './words/spanish.ts'

/** The first order of each part of a Spanish sentence: a formal imperative or an infinitive. */
export function spanishCommands(words: readonly Word[]): Command[] {
  return stretchesOf(words).flatMap(({ from, to }) => {
    const first = words[from]
    const starts = [from, ...words.flatMap((word, at) => (at > from && at < to && afterComma(word) ? [at] : []))]
    const second = words[from + 1]
    const leaning =
      first !== undefined &&
      (subordinators.has(first.lower) ||
        functionWords.has(first.lower) ||
        first.lower.endsWith('mente') ||
        (second !== undefined && afterComma(second)))
    const command = (leaning ? starts : [from]).map((at) => spanishCommandAt(words, at)).find((it) => it !== undefined)
    return command ? [command] : []
  })
}

/** An order whose words begin at `at`. */
export function spanishCommandAt(words: readonly Word[], at: number): Command | undefined {
  let verb = at
  let forbids = false
  for (; ; verb++) {
    const lower = words[verb]?.lower ?? ''
    if (lower === 'no' || lower === 'nunca') forbids = true
    else if (!leadIns.has(lower) && !lower.endsWith('mente')) break
  }
  return isSpanishOrder(words[verb], words[verb + 1]) ? { verb, forbids } : undefined
}

function isSpanishOrder(word: Word | undefined, next: Word | undefined): boolean {
  if (word?.kind !== 'word' || word.quoted || functionWords.has(word.lower)) return false
  const bare = withoutPronoun(word.lower)
  if (imperatives.has(bare) || imperatives.has(bare.replace(/^(?:des|re|sobre)/, ''))) return true
  if (isInfinitive(bare)) return true
  return next !== undefined && /^\s+$/.test(next.gap) && articles.has(next.lower) && /(?:[ea]|en|an)$/.test(bare) && !/(?:ción|dad)$/.test(word.lower)
}

export const isInfinitive = (lower: string): boolean => /^[a-zñü]{2,}[aei]r$/.test(unaccented(lower)) && !nounsLikeInfinitives.has(lower)

/** `ábralo` → `abra`, `limpiarlos` → `limpiar`. */
export function withoutPronoun(lower: string): string {
  const bare = unaccented(lower)
  const stem = bare.replace(/(?:se)?(?:lo|la|los|las|le|les|se)$/, '')
  return stem.length > 2 && (imperatives.has(stem) || (stem.endsWith('r') && isInfinitive(stem))) ? stem : bare
}

const unaccented = (lower: string): string =>
  lower
    .normalize('NFD')
    .replace(/[\u0300\u0301]/g, '')
    .normalize('NFC')
