import { afterComma } from './clauses.ts'
import { commandReader } from './command.ts'
import { isVerb, takesObject } from './english-order.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, type Word } from './sentence-view.ts'
import { isInfinitive, withoutPronoun } from './spanish-command.ts'
import * as english from './words/english.ts'
import { nounVerbs } from './words/english-verbs.ts'
import * as spanish from './words/spanish.ts'

interface Joints {
  and: ReadonlySet<string>
  atOnce: RegExp
  goingOn: ReadonlySet<string>
  closing: ReadonlySet<string>
  gestures: { first: ReadonlySet<string>; next: ReadonlySet<string> }
  /** Words behind which an "and" can belong to a clause and not to the order. */
  nested: ReadonlySet<string>
  /** The same before an infinitive: "the crank to turn and lift". */
  beforeInfinitive: ReadonlySet<string>
  isInfinitive: (word: Word | undefined) => boolean
}

type ActWords = Pick<Joints, 'atOnce' | 'goingOn' | 'closing' | 'gestures'>

const joints: Partial<Record<string, Joints>> = {
  en: {
    ...pick(english),
    and: new Set(['and', 'then']),
    nested: new Set(['you', 'they', 'can', 'may', 'must', 'will', 'that']),
    beforeInfinitive: new Set(['to']),
    isInfinitive: isVerb,
  },
  es: {
    ...pick(spanish),
    and: new Set(['y', 'e', 'luego', 'después']),
    nested: new Set(['que', 'puede', 'debe']),
    beforeInfinitive: new Set(['para', 'a']),
    isInfinitive: (word) => isInfinitive(word?.lower ?? ''),
  },
}

function pick({ atOnce, goingOn, closing, gestures }: ActWords): ActWords {
  return { atOnce, goingOn, closing, gestures }
}

/** A sentence of a step that orders two acts, one after the other. */
export function severalInstructions(view: SentenceView): PlainFinding | undefined {
  const { words, block, language, sentence } = view
  const joint = joints[language]
  const first = view.commands.find(({ forbids }) => !forbids)
  if (block.kind !== 'step' || !joint || !first || joint.atOnce.test(sentence.text)) return undefined
  const bare = language === 'es' ? withoutPronoun : (lower: string) => lower
  const firstVerb = bare(words[first.verb]?.lower ?? '')
  if (joint.goingOn.has(firstVerb)) return undefined
  const tells = words.slice(first.verb, first.verb + 2).some(({ lower }) => english.leavesOutThat.has(lower))
  let chained = first.verb
  for (let at = first.verb + 1; at < words.length; at++) {
    const word = words[at]
    if (!word || joint.nested.has(word.lower)) return undefined
    if (joint.beforeInfinitive.has(word.lower) && joint.isInfinitive(words[at + 1])) return undefined
    if (joint.and.has(word.lower)) continue
    const afterAnd = joint.and.has(words[at - 1]?.lower ?? '')
    if (!afterAnd && !afterComma(word)) continue
    // "Clean, dry and grease the part" is one instruction in three verbs.
    if (at - chained === (afterAnd ? 2 : 1)) {
      chained = at
      continue
    }
    const next = commandReader(language)?.at(words, at)
    const verb = next && words[next.verb]
    // "Try to go up and down" in Spanish: infinitives belong to the order before them.
    if (verb && language === 'es' && isInfinitive(bare(verb.lower)) !== isInfinitive(firstVerb)) continue
    if (!verb || next.forbids || isOneAct(joint, firstVerb, bare(verb.lower)) || !hasOwnObject(words, next.verb, language)) continue
    // "Make sure all bolts, snap rings and nuts are off": things are listed, not acts.
    if (tells && !takesObject(words[next.verb + 1])) continue
    return findingAt(view, 'several-instructions', { start: verb.start, end: words.at(-1)?.end ?? verb.end })
  }
  return undefined
}

const isOneAct = ({ closing, gestures }: Joints, first: string, next: string) =>
  closing.has(next) || (gestures.first.has(first) && gestures.next.has(next))

/** Whether the verb has something to act on: in "the pump and drain" the last word is a noun. */
function hasOwnObject(words: readonly Word[], verb: number, language: string): boolean {
  const next = words[verb + 1]
  const lower = words[verb]?.lower ?? ''
  if (language !== 'en') return true
  if (!next || /[,;:.]/.test(next.gap) || next.lower === 'and' || next.lower === 'or' || next.lower === 'of') return false
  // "Open doors" are things; "open valve V13" orders.
  if (lower === 'open') return next.kind !== 'word' || isOwn(next) || words[verb + 2]?.kind === 'identifier'
  if (!nounVerbs.has(lower)) return true
  if (english.overPreposition.has(lower) && english.prepositions.has(next.lower)) return true
  if (next.kind === 'identifier') return english.actsOnTag.has(lower)
  // A key or a button has a name of its own: "press Enter".
  return isOwn(next) || next.kind !== 'word' || next.quoted || /^\p{Lu}/u.test(next.text)
}

/** Words that follow a verb and no noun. */
const isOwn = ({ lower }: Word) =>
  english.determiners.has(lower) || english.objectPronouns.has(lower) || english.particles.has(lower) || english.clauseOpeners.has(lower)
