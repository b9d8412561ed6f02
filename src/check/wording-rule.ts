import type { PlainKind } from '../reading/plain/finding.ts'
import type { RuleTexts } from '../source/finding.ts'
import type { Rule } from './rule.ts'
import { type WordingFinding, wordingOf } from './wording.ts'

/** How a kind of finding is said: what is wrong, and what to do about it. */
export interface Said {
  message(found: WordingFinding): string
  help(found: WordingFinding): string
}

/** A rule about the wording. It tells what is sure; what can be read in another way is left to `unsure-wording`. */
export function wordingRule(texts: Omit<RuleTexts, 'severity' | 'concerns'>, kinds: Partial<Record<PlainKind, Said>>): Rule {
  return {
    ...texts,
    severity: 'warning',
    concerns: 'wording',
    *check(_machine, graph) {
      for (const found of graph.made(wordingOf)) {
        const said = kinds[found.kind]
        if (said && found.sure) yield { message: said.message(found), place: found.place, help: said.help(found) }
      }
    },
  }
}

/** The help of a finding: what to write instead where that is certain, else what to do. */
export const insteadOr =
  (other: string) =>
  ({ suggestion }: WordingFinding): string =>
    suggestion === undefined ? other : `write \`${suggestion}\``
