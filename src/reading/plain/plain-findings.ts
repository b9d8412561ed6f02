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
 * a page, `replacedTerms` with a glossary, `noResult` of a safety message.
 */
export function plainFindings(sentences: readonly Sentence[], block: Block, language: string, machineWords?: MachineWords): PlainFinding[] {
  const views = sentences.map((sentence) => viewOf(sentence, block, language))
  const found = views.flatMap((view) => inSentence(view, machineWords))
  const paragraph = longParagraph(sentences, block)
  if (paragraph) found.push(paragraph)
  // A passive is why the step orders nothing: one cause, one finding.
  const without = found.some(({ kind, sure }) => kind === 'passive' && sure) ? undefined : noCommand(views)
  if (without) found.push(without)
  const kept = without ? found.filter(({ kind }) => kind !== 'passive') : found
  return kept.sort((a, b) => a.start - b.start || a.end - b.end || (a.kind < b.kind ? -1 : 1))
}

function inSentence(view: SentenceView, machineWords: MachineWords | undefined): PlainFinding[] {
  const one = [
    longSentence(view.sentence, view.block),
    severalInstructions(view),
    lateCondition(view),
    missingComma(view),
    passive(view),
    commandInNote(view),
  ].filter((finding) => finding !== undefined)
  return [
    ...one,
    ...nounClusters(view, machineWords),
    ...contractions(view),
    ...semicolons(view),
    ...doubledWords(view),
    ...stackedNegatives(view),
    ...unitStyle(view),
    ...plainWords(view),
  ]
}
