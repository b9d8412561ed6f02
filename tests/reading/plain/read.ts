import type { Block, BlockKind } from '../../../src/reading/block.ts'
import type { PlainFinding } from '../../../src/reading/plain/finding.ts'
import { plainFindings } from '../../../src/reading/plain/plain-findings.ts'
import { type SentenceView, viewOf } from '../../../src/reading/plain/sentence-view.ts'
import { sentencesOf } from '../../../src/reading/sentences.ts'

export function findingsOf(kind: BlockKind, text: string, language = 'en'): PlainFinding[] {
  const block: Block = { kind, text }
  return plainFindings(sentencesOf(block, language), block, language)
}

/** `kind: the words`, and ` → suggestion` where there is one; a question mark where the finding is not sure. */
export const inShort = (findings: readonly PlainFinding[]): string[] =>
  findings.map(({ kind, words, suggestion, sure }) => `${kind}${sure ? '' : '?'}: ${words}${suggestion === undefined ? '' : ` → ${suggestion}`}`)

export const kindsOf = (kind: BlockKind, text: string, language = 'en'): string[] => findingsOf(kind, text, language).map((finding) => finding.kind)

/** The sentences of a text as the findings see them. */
export function viewsOf(kind: BlockKind, text: string, language = 'en'): SentenceView[] {
  const block: Block = { kind, text }
  return sentencesOf(block, language).map((sentence) => viewOf(sentence, block, language))
}
