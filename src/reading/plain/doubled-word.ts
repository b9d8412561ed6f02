import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, type Word } from './sentence-view.ts'

/** Words that can stand twice in a row and be right. */
const twice: Partial<Record<string, ReadonlySet<string>>> = {
  en: new Set(['had', 'that']),
  es: new Set(['no', 'poco', 'casi', 'muy']),
  de: new Set(['sie', 'die', 'der', 'das', 'den', 'dem', 'ihr', 'ihnen', 'es']),
  fr: new Set(['nous', 'vous', 'faire', 'en']),
  it: new Set(['così', 'piano', 'via', 'mano', 'poco', 'si', 'subito']),
}

/** A word that stands twice or more in a row by a slip: "the the". */
export function doubledWords(view: SentenceView): PlainFinding[] {
  const right = twice[view.language]
  const { words } = view
  const found: PlainFinding[] = []
  for (let at = 1; at < words.length; at++) {
    const first = words[at - 1]
    if (!first || !repeats(words[at], first) || right?.has(first.lower)) continue
    while (repeats(words[at + 1], first)) at++
    found.push(findingAt(view, 'doubled-word', { start: first.start, end: words[at]?.end ?? first.end }, { suggestion: first.text }))
  }
  return found
}

/** A proper name that begins with the same capital both times is left alone, a quotation too. */
function repeats(word: Word | undefined, first: Word): boolean {
  if (word?.kind !== 'word' || first.kind !== 'word' || word.lower !== first.lower || !/^\s+$/.test(word.gap) || word.quoted || word.text.length < 2)
    return false
  return !(/^\p{Lu}/u.test(word.text) && word.text === first.text)
}
