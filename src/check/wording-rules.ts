import type { Rule } from './rule.ts'
import { commandInNote } from './rules/command-in-note.ts'
import { contractedWord } from './rules/contracted-word.ts'
import { doubledWord } from './rules/doubled-word.ts'
import { lateCondition } from './rules/late-condition.ts'
import { longParagraph } from './rules/long-paragraph.ts'
import { longSentence } from './rules/long-sentence.ts'
import { nounCluster } from './rules/noun-cluster.ts'
import { pageTooHard } from './rules/page-too-hard.ts'
import { passiveStep } from './rules/passive-step.ts'
import { plainWord } from './rules/plain-word.ts'
import { replacedTerm } from './rules/replaced-term.ts'
import { semicolonInSentence } from './rules/semicolon-in-sentence.ts'
import { severalInstructions } from './rules/several-instructions.ts'
import { stackedNegative } from './rules/stacked-negative.ts'
import { stepWithoutCommand } from './rules/step-without-command.ts'
import { unexpandedAbbreviation } from './rules/unexpanded-abbreviation.ts'
import { unitStyle } from './rules/unit-style.ts'
import { unsureWording } from './rules/unsure-wording.ts'
import type { SentenceRule } from './wording-rule.ts'

/** The rules about how sentences are written. */
export const sentenceRules: readonly SentenceRule[] = [
  commandInNote,
  contractedWord,
  doubledWord,
  lateCondition,
  longParagraph,
  longSentence,
  nounCluster,
  passiveStep,
  plainWord,
  replacedTerm,
  semicolonInSentence,
  severalInstructions,
  stackedNegative,
  stepWithoutCommand,
  unexpandedAbbreviation,
  unitStyle,
  unsureWording,
]

/** The rules about how texts are written. */
export const wordingRules: readonly Rule[] = [...sentenceRules, pageTooHard]
