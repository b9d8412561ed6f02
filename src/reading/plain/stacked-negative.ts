import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, spansOf } from './sentence-view.ts'

const not = String.raw`(?:not|never|cannot|\w+n['’]t)`
/** In one clause: no comma, and no word that joins two clauses. */
const inClause = String.raw`(?:\s+(?!and\b|but\b|or\b|if\b|when\b|only\b|so\b)[\w'’-]+){0,4}?\s+`

/** Not those that tell a state of the machine: "not unlocked" is what can be seen. */
const negativeAdjectives = `
  uncommon unusual unlike unlikely unnecessary unsafe unreasonable unknown impossible insufficient incorrect inadequate incomplete invisible inaccessible
  irrelevant`
  .trim()
  .split(/\s+/)

/** A negative that turns another one round, so that the reader has to work out what holds. Two that stand side by side do not. */
const english = [
  String.raw`\b${not}\s+unless\b`,
  String.raw`\b(?:${not}|no|nobody)\b[^.;:]*?\b(?:unless|until)\b[^.;:]*?\b(?:not|never)\b(?!\s+only)`,
  String.raw`\bunless\b[^.;:,]*?\b(?:not|never|no longer)\b(?!\s+only)`,
  String.raw`\b${not}\s+(?:${negativeAdjectives.join('|')})\b`,
  String.raw`\b${not}\s+fail\s+to\b`,
  String.raw`\b${not}${inClause}(?:nothing|nobody|nowhere|none|neither)\b`,
  String.raw`\b(?:do|does|did|must|can|may|is|are|should)\s+not\s+not\b`,
]
/** "No … nada" is one negative in Spanish. */
const spanish = [
  String.raw`\bno\b[^.;:]*?\b(?:a menos que|a no ser que|salvo que|hasta que)\b[^.;:]*?\bno\b(?!\s+ser\b)`,
  String.raw`\bno\s+(?:a menos que|deje de no)\b`,
]
const patterns: Partial<Record<string, RegExp>> = { en: new RegExp(english.join('|'), 'gi'), es: new RegExp(spanish.join('|'), 'gi') }

const firstWords = new Set(['not', 'never', 'cannot', 'no', 'nobody', 'unless'])

export function stackedNegatives(view: SentenceView): PlainFinding[] {
  const pattern = patterns[view.language]
  if (!pattern || !view.words.some(({ lower }) => firstWords.has(lower) || lower.endsWith("n't"))) return []
  return spansOf(view.block.text, view.sentence, pattern).map((span) => findingAt(view, 'stacked-negative', span))
}
