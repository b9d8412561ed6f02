import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, type Word } from './sentence-view.ts'
import { betweenAdverbs, clauseOpeners, leavesOutThat, prepositions } from './words/english.ts'
import { irregularParticiples, noParticiples, stateParticiples } from './words/english-verbs.ts'
import * as spanish from './words/spanish.ts'

/**
 * A passive in a step: nobody is told to act. A participle that tells a state ("the valve is closed") is none, nor is one in a clause behind
 * "that", "when" and the like, which orders nothing; both are where somebody acts ("by the operator"). Not sure in the simple present.
 */
export function passive(view: SentenceView): PlainFinding | undefined {
  if (view.block.kind !== 'step') return undefined
  const language = view.language
  if (language === 'en') return englishPassive(view)
  return language === 'es' ? spanishPassive(view) : undefined
}

const be = new Set(['is', 'are', 'was', 'were', 'be', 'been', 'being', 'am', 'get', 'gets', 'got', 'getting'])
/** "To be replaced" is an order only behind these: "enough to be handled" is none. */
const obligations = new Set(['has', 'have', 'had', 'needs', 'need', 'is', 'are', 'ought', 'required'])
const acts = new Set(['be', 'been', 'being', 'was', 'were', 'gets', 'get', 'got', 'getting'])

function englishPassive(view: SentenceView): PlainFinding | undefined {
  const { words, tail } = view
  for (const [at, word] of words.entries()) {
    if (!be.has(word.lower) || word.quoted) continue
    if (word.lower === 'being' && !be.has(words[at - 1]?.lower ?? '')) continue
    if (words[at - 1]?.lower === 'to' && !obligations.has(words[at - 2]?.lower ?? '')) continue
    const participle = participleAfter(words, at, tail.includes('?'))
    const last = participle === undefined ? undefined : words[participle]
    if (participle === undefined || !last) continue
    const byWhom = hasAgent(words, participle)
    if (!byWhom && (behindOpener(words, at) || isState(words, at, participle))) continue
    const sure = byWhom || acts.has(word.lower)
    return findingAt(view, 'passive', { start: word.start, end: last.end }, { sure })
  }
  return undefined
}

/** "By hand" and "by turning it" say how, and not who. */
function hasAgent(words: readonly Word[], participle: number): boolean {
  const by = words.findIndex(({ lower }, index) => index > participle && index < participle + 4 && lower === 'by')
  const next = words[by + 1]
  return by !== -1 && next !== undefined && next.kind === 'word' && next.lower !== 'hand' && next.lower !== 'means' && !next.lower.endsWith('ing')
}

/** The participle tells how the thing is, and nothing between says that somebody acts: "is closed", "must be closed". */
function isState(words: readonly Word[], at: number, participle: number): boolean {
  if (words[at - 1]?.lower === 'to') return false
  const between = words.slice(at + 1, participle).some(({ lower }) => be.has(lower) || (lower.endsWith('ly') && lower !== 'fully'))
  const been = ['been', 'being', 'get', 'gets', 'got', 'getting', 'was', 'were'].includes(words[at]?.lower ?? '')
  return !between && !been && stateParticiples.has(words[participle]?.lower ?? '')
}

/** The participle that belongs to a form of "be"; in a question the subject stands between them. */
function participleAfter(words: readonly Word[], at: number, question: boolean): number | undefined {
  let subject = question && at === 0
  for (let next = at + 1; next < words.length && next < at + 8; next++) {
    const word = words[next]
    if (!word || /[,;:.()]/.test(word.gap)) return undefined
    if (isParticiple(word)) return next
    if (betweenAdverbs.has(word.lower) || /..ly$/.test(word.lower) || be.has(word.lower)) continue
    if (!subject || prepositions.has(word.lower)) return undefined
    subject = subject && next < at + 6
  }
  return undefined
}

const isParticiple = ({ kind, lower }: Word) =>
  kind === 'word' && ((/..ed$/.test(lower) && !/eed$/.test(lower) && !noParticiples.has(lower)) || irregularParticiples.has(lower))

const behindOpener = (words: readonly Word[], at: number) =>
  words.slice(0, at).some(({ lower }) => clauseOpeners.has(lower) || leavesOutThat.has(lower))

function spanishPassive(view: SentenceView): PlainFinding | undefined {
  for (const [at, word] of view.words.entries()) {
    const next = view.words[at + 1]?.lower.endsWith('mente') ? view.words[at + 2] : view.words[at + 1]
    if (!spanish.formsOfSer.has(word.lower) || !next || !isSpanishParticiple(next) || /[,;:.()]/.test(next.gap)) continue
    return findingAt(view, 'passive', { start: word.start, end: next.end })
  }
  return undefined
}

function isSpanishParticiple({ lower, kind }: Word): boolean {
  if (kind !== 'word' || spanish.noParticiples.has(lower)) return false
  return /^[a-zñ]+[aií]d[oa]s?$/.test(lower) || spanish.irregularParticiples.has(lower.replace(/[oa]s?$/, 'o'))
}
