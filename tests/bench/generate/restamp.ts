import { revise } from '../../../src/load/revise.ts'
import { stamp } from '../../../src/load/stamp.ts'
import type { Problem, RuleTexts } from '../../../src/source/finding.ts'
import { sourceText } from '../../../src/source/source-text.ts'

/** A page with the hashes of its new text: a lesson of what it teaches, a translation of the source that it renders. */
export function restamped(path: string, source: string, translation?: string): string {
  const refuse = (_: RuleTexts, { message }: Problem) => {
    throw new Error(`${path}: ${message}`)
  }
  if (translation !== undefined) {
    const stamped = stamp(sourceText(path, translation), sourceText(path, source), refuse)
    if (!stamped || 'unlike' in stamped) throw new Error(`${path}: the translation has other blocks than its source`)
    return stamped.text
  }
  if (!path.startsWith('pages/lessons/')) return source
  const revised = revise(sourceText(path, source), refuse)
  if (!revised || !('text' in revised)) throw new Error(`${path}: the lesson has no history`)
  return revised.text
}
