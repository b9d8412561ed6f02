import { afterComma } from './clauses.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, type Word } from './sentence-view.ts'
import * as english from './words/english.ts'
import * as spanish from './words/spanish.ts'

interface ConditionWords {
  conditions: ReadonlySet<string>
  /** Words after which the condition belongs to another clause, or narrows the order down: "that", "only". */
  clauseOpeners: ReadonlySet<string>
  narrowing: ReadonlySet<string>
  /** Orders after which "if" says what to find out, and those after which any clause does that follows at once. */
  findingOut: ReadonlySet<string>
  noting: ReadonlySet<string>
  shortConditions: ReadonlySet<string>
}

const byLanguage: Partial<Record<string, ConditionWords>> = { en: english, es: spanish }

/**
 * A condition that stands after the order it belongs to: the reader has acted before it is read. One in parentheses, or of a word or two
 * ("if necessary"), is taken in at once, and one after a prohibition comes early enough.
 */
export function lateCondition(view: SentenceView): PlainFinding | undefined {
  const { words, block } = view
  const language = byLanguage[view.language]
  const command = block.kind === 'step' || block.kind === 'message' ? view.commands.at(-1) : undefined
  if (!language || !command || command.forbids) return undefined
  const at = words.findIndex((word, index) => index > command.verb && opensCondition(word, words[index + 1], language))
  const word = words[at]
  if (!word || isContent(words, command.verb, at, language) || isShort(words.slice(at + 1), language)) return undefined
  return findingAt(view, 'late-condition', { start: word.start, end: words.at(-1)?.end ?? word.end })
}

function opensCondition({ lower, gap, quoted }: Word, next: Word | undefined, { conditions }: ConditionWords): boolean {
  if (!conditions.has(lower) || quoted || gap.includes('(')) return false
  return lower !== 'once' || english.afterOnce.has(next?.lower ?? '')
}

/** Whether the clause says what to find out or to wait for, narrows the order down, or belongs to another clause. */
function isContent(words: readonly Word[], verb: number, at: number, language: ConditionWords): boolean {
  if (words.slice(verb + 1, at).some(({ lower }) => language.clauseOpeners.has(lower))) return true
  if (language.narrowing.has(words[at - 1]?.lower ?? '')) return true
  const order = words[verb]?.lower ?? ''
  const opensQuestion = ['if', 'si'].includes(words[at]?.lower ?? '') && language.findingOut.has(order)
  return opensQuestion || (at <= verb + 2 && language.noting.has(order))
}

function isShort(clause: readonly Word[], { shortConditions }: ConditionWords): boolean {
  const own = clause.filter((word) => !afterComma(word))
  return own.length < 2 || (own.length < 3 && shortConditions.has(own[0]?.lower ?? ''))
}
