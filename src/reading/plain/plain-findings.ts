import type { Block, Sentence } from '../block.ts'
import { commandInNote } from './command-in-note.ts'
import { contractions } from './contraction.ts'
import { doubledWords } from './doubled-word.ts'
import type { PlainFinding } from './finding.ts'
import { lateCondition } from './late-condition.ts'
import { longParagraph, longSentence } from './length.ts'
import { missingComma } from './missing-comma.ts'
import { noCommand } from './no-command.ts'
import { type MachineWords, nounClusters } from './noun-cluster.ts'
import { passive } from './passive.ts'
import { plainWords } from './plain-word.ts'
import { semicolons } from './semicolon.ts'
import { type SentenceView, viewOf } from './sentence-view.ts'
import { severalInstructions } from './several-instructions.ts'
import { stackedNegatives } from './stacked-negative.ts'
import { unitStyle } from './unit-style.ts'

/**
 * Everything in the sentences of a block that is hard to read, by place. What needs more than the block is asked for beside it: `unexpanded` of
 * a page, `replacedTerms` with a glossary.
 */
export function plainFindings(sentences: readonly Sentence[], block: Block, language: string, machineWords?: MachineWords): PlainFinding[] {
  const views = sentences.map((sentence) => viewOf(sentence, block, language))
  const found: PlainFinding[] = []
  for (const view of views) for (const judge of judges) found.push(...asList(judge(view, machineWords)))
  found.push(...asList(longParagraph(sentences, block)))
  // A passive is why the step orders nothing: one cause, one finding.
  const without = found.some(({ kind, sure }) => kind === 'passive' && sure) ? undefined : noCommand(views)
  const kept = without ? [...found.filter(({ kind }) => kind !== 'passive'), without] : found
  return kept.sort((a, b) => a.start - b.start || a.end - b.end || (a.kind < b.kind ? -1 : 1))
}

type Judge = (view: SentenceView, machineWords: MachineWords | undefined) => PlainFinding | readonly PlainFinding[] | undefined

const judges: readonly Judge[] = [
  longSentence,
  severalInstructions,
  lateCondition,
  missingComma,
  passive,
  commandInNote,
  nounClusters,
  contractions,
  semicolons,
  doubledWords,
  stackedNegatives,
  unitStyle,
  plainWords,
]

const nothing: readonly PlainFinding[] = []

function asList(found: PlainFinding | readonly PlainFinding[] | undefined): readonly PlainFinding[] {
  if (found === undefined) return nothing
  return 'kind' in found ? [found] : found
}
