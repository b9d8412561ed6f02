import { afterComma } from './clauses.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'
import { unmarkedCommand } from './unmarked-command.ts'
import { subordinators } from './words/english.ts'

/** An English condition that runs into its order without a comma: "When the motor stops open the guard." */
export function missingComma(view: SentenceView): PlainFinding | undefined {
  const { words, language, block } = view
  if (language !== 'en' || !subordinators.has(words[0]?.lower ?? '') || words.some(afterComma)) return undefined
  const at = unmarkedCommand(words, { from: 0, to: words.length })
  const [before, verb] = at === undefined ? [] : [words[at - 1], words[at]]
  if (!before || !verb) return undefined
  const suggestion = `${block.text.slice(before.start, before.end)}, ${verb.text}`
  return findingAt(view, 'missing-comma', { start: before.start, end: verb.end }, { suggestion })
}
