import type { PlainKind } from '../reading/plain/finding.ts'
import type { Problem, RuleTexts } from '../source/finding.ts'
import type { Rule } from './rule.ts'
import { type WordingFinding, wordingOf } from './wording.ts'

/** How a kind of finding is said: what is wrong, and what to do about it. */
export interface Said {
  message(found: WordingFinding): string
  help(found: WordingFinding): string
}

/** A rule about sentences. It can say what was found in a text that is no page of a machine. */
export interface SentenceRule extends Rule {
  problems(found: readonly WordingFinding[]): Problem[]
}

export function sentenceRule(texts: Omit<RuleTexts, 'concerns'>, problem: (found: WordingFinding) => Problem | undefined): SentenceRule {
  const problems = (found: readonly WordingFinding[]) => found.flatMap((it) => problem(it) ?? [])
  return { ...texts, concerns: 'wording', problems, check: (_machine, graph) => problems(graph.made(wordingOf)) }
}

/** A rule about the wording. It tells what is sure; what can be read in another way is left to `unsure-wording`. */
export function wordingRule(texts: Omit<RuleTexts, 'severity' | 'concerns'>, kinds: Partial<Record<PlainKind, Said>>): SentenceRule {
  return sentenceRule({ ...texts, severity: 'warning' }, (found) => {
    const said = found.sure ? kinds[found.kind] : undefined
    return said && { message: said.message(found), place: found.place, help: said.help(found) }
  })
}

/** The help of a finding: what to write instead where that is certain, else what to do. */
export const insteadOr =
  (other: string) =>
  ({ suggestion }: WordingFinding): string =>
    suggestion === undefined ? other : `write \`${suggestion}\``
