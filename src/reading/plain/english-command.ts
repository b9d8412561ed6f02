import { afterComma, type Stretch, stretchesOf } from './clauses.ts'
import { isOnlyVerb, orders, takesObject } from './english-order.ts'
import type { Word } from './sentence-view.ts'
import { unmarkedCommand } from './unmarked-command.ts'
import { leadIns, prepositions, subordinators } from './words/english.ts'

/** An order: the index of its verb, and whether it forbids. */
export interface Command {
  verb: number
  forbids: boolean
}

/** The first order of each part of an English sentence. */
export function englishCommands(words: readonly Word[]): Command[] {
  return stretchesOf(words).flatMap((stretch) => {
    const command = commandOf(words, stretch)
    return command ? [command] : []
  })
}

/** The order of a part of a sentence, behind its condition or the other words that lead in to it. */
function commandOf(words: readonly Word[], { from, to }: Stretch): Command | undefined {
  const here = commandAt(words, from)
  if (here) return here
  const [first, second] = [words[from], words[from + 1]]
  if (!first || !second) return undefined
  const leadsIn = isLeadIn(first) || afterComma(second)
  const behindCommas = words.slice(from + 1, to).flatMap((word, index) => (afterComma(word) ? (commandAt(words, from + 1 + index) ?? []) : []))
  const clear = behindCommas.find(({ verb }) => isOnlyVerb(words[verb]) || takesObject(words[verb + 1]) || words[verb + 1]?.kind === 'identifier')
  if (clear && (leadsIn || takesObject(words[clear.verb + 1]))) return clear
  if (!leadsIn) return undefined
  // "In the lowered, level position" holds no order; "When it is full, drain it" does.
  if (behindCommas[0]) return behindCommas[0]
  const verb = unmarkedCommand(words, { from, to })
  return verb === undefined ? undefined : { verb, forbids: false }
}

/** Words that open a condition, a place, a purpose or a way; the order follows them: "If", "With", "Using", "Should". */
const isLeadIn = ({ lower }: Word) => subordinators.has(lower) || prepositions.has(lower) || lower === 'should' || /..(?:ly|ing)$/.test(lower)

/** An order whose words begin at `at`. */
export function commandAt(words: readonly Word[], at: number): Command | undefined {
  let verb = at
  let forbids = false
  for (; ; verb++) {
    const lower = words[verb]?.lower ?? ''
    if (lower === 'never' || lower === "don't" || (lower === 'not' && words[verb - 1]?.lower === 'do')) forbids = true
    else if (lower === 'and' && isAdverb(words[verb - 1]?.lower ?? '') && isAdverb(words[verb + 1]?.lower ?? '')) continue
    else if (!(lower === 'do' && words[verb + 1]?.lower === 'not') && !leadIns.has(lower) && !isAdverb(lower)) break
  }
  const verbs = forbids && words[verb - 1]?.lower !== 'never' ? words[verb]?.kind === 'word' : orders(words, verb)
  return verbs ? { verb, forbids } : undefined
}

const isAdverb = (lower: string) => /..ly$/.test(lower) && !['apply', 'supply', 'assembly', 'reply', 'only', 'rely', 'comply'].includes(lower)
