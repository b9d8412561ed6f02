import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'

const whole: Readonly<Record<string, string>> = {
  "can't": 'cannot',
  "won't": 'will not',
  "shan't": 'shall not',
  "let's": 'let us',
  "i'm": 'I am',
}
const endings: Readonly<Record<string, string>> = { "'re": 'are', "'ve": 'have', "'ll": 'will', "'m": 'am' }
/** Words behind which `'s` is "is" or "has", and not a genitive. */
const subjects = new Set(['it', 'that', 'there', 'here', 'what', 'who', 'where', 'how', 'when', 'he', 'she'])
/** `'d`: "had" or "would". */
const persons = new Set(['i', 'you', 'he', 'she', 'it', 'we', 'they', 'there', 'that', 'who'])

/** The contractions of an English sentence. A genitive (`the pump's seal`) is none, nor is a label in quotation marks. */
export function contractions(view: SentenceView): PlainFinding[] {
  if (view.language !== 'en' || !/['’]/.test(view.sentence.text)) return []
  return view.words.flatMap((word) => {
    if (!word.lower.includes("'") || word.quoted) return []
    const full = inFull(word.lower)
    if (full === undefined) return []
    const suggestion = /^\p{Lu}/u.test(word.text) ? full.replace(/^./, (first) => first.toUpperCase()) : full
    return [findingAt(view, 'contraction', word, full === '' ? {} : { suggestion })]
  })
}

/** The words in full; empty where they can be two things, undefined where it is no contraction. */
function inFull(lower: string): string | undefined {
  const known = whole[lower]
  if (known) return known
  const [, stem = '', ending = ''] = /^([a-z]+?)(n't|'[a-z]+)$/.exec(lower) ?? []
  if (ending === "n't") return `${stem} not`
  if (ending === "'s") return subjects.has(stem) ? '' : undefined
  if (ending === "'d") return persons.has(stem) ? '' : undefined
  const verb = endings[ending]
  return verb && `${stem} ${verb}`
}
