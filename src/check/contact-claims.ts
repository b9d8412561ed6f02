/** What a sentence says of a contact or signal, at its offsets in the text. */
export interface StateClaim {
  says: string
  start: number
  end: number
}

/** `NO` in capitals alone is no word for it in a sentence: it also forbids. */
const contactWords: readonly { contact: 'NO' | 'NC'; words: RegExp }[] = [
  {
    contact: 'NC',
    words:
      /\b[Nn]ormally[ -]closed\b|\bN\.C\.|\bNC(?= contact\b)|\b[Bb]reak(?= contact\b)|\b[Nn]ormalmente cerrad[oa]\b|\bcontacto (?:NC|de apertura)\b/gu,
  },
  {
    contact: 'NO',
    words:
      /\b[Nn]ormally[ -]open\b|\bN\.O\.|\bNO(?= contact\b)|\b[Mm]ake(?= contact\b)|\b[Nn]ormalmente abiert[oa]\b|\bcontacto (?:NA|NO|de cierre)\b/gu,
  },
]

const doubt = /\b(?:not|never|no longer|instead of|rather than|neither|nor|nunca|tampoco|en vez de)\b|n['’]t\b|\bno\b/iu

/** The one contact that a sentence claims; none where it speaks of both, or denies. */
export function contactClaim(sentence: string): (StateClaim & { contact: 'NO' | 'NC' }) | undefined {
  const found = contactWords.flatMap(({ contact, words }) =>
    [...sentence.matchAll(words)].map(({ 0: says, index }) => ({ contact, says, start: index, end: index + says.length })),
  )
  const [first, ...others] = found
  if (!first || others.some(({ contact }) => contact !== first.contact)) return undefined
  return doubt.test(sentence.slice(0, first.start) + sentence.slice(first.end)) ? undefined : first
}

const afterTag = /^[ (,]*(?:(?:is|has|was|are|wired|as|a|an|the|its|es|está|tiene|un|una) )*\(?$/iu
const beforeTag =
  /^(?: contact(?:s|o)? (?:of|at|de|del))?(?: (?!(?:of|at|in|on|by|to|for|from|with|and|or|near|beside|behind|before|after|below|above|y|o|con|junto|en)\b)[\p{L}-]+){0,4} ?\(?$/iu

/** Verbs that may stand between where the claim is one of a contact, and not of a valve. */
const afterTagAtContact =
  /^ (?:(?:works|comes|opens|closes|acts|switches|funciona|conmuta) )?(?:with|uses|gives|through|con|usa|lleva) (?:(?:a|an|the|its|un|una|el|su) )?$/iu
const ofContact = /^ (?:contact|output|contacto|salida)s?\b/iu

/** Whether a sentence says it of the thing that it names: `PS1 is normally open`, `the NC contact of switch PS1`. */
export function isSaidOf(sentence: string, claim: StateClaim, { start, end }: { start: number; end: number }): boolean {
  if (claim.start >= end) {
    const between = sentence.slice(end, claim.start)
    return afterTag.test(between) || (ofContact.test(sentence.slice(claim.end)) && afterTagAtContact.test(between))
  }
  return claim.end <= start && beforeTag.test(sentence.slice(claim.end, start))
}

const states: readonly { on: boolean; words: RegExp }[] = [
  { on: false, words: /\b(off|inactiv[oa]) (?:when|while|cuando|mientras|con) ([^,.;:()]+)/iu },
  { on: true, words: /\b(on|activ[oa]) (?:when|while|cuando|mientras|con) ([^,.;:()]+)/iu },
]
const small = new Set(['the', 'a', 'an', 'its', 'is', 'are', 'el', 'la', 'los', 'las', 'un', 'una', 'está', 'se', 'hay'])

/** `on when the lift is at the bottom`, as the state and the words of its condition that carry a meaning. */
export interface Condition extends StateClaim {
  on: boolean
  words: readonly string[]
}

/** The condition under which a text says that a signal is on or off; the first, and none where it denies. */
export function conditionOf(text: string): Condition | undefined {
  const [first, second] = states.flatMap(({ on, words }) => {
    const match = words.exec(text)
    if (!match) return []
    const said = (match[2] ?? '').toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []
    return [
      {
        on,
        words: said.filter((word) => !small.has(word)),
        says: match[0].trimEnd(),
        start: match.index,
        end: match.index + match[0].trimEnd().length,
      },
    ]
  })
  return first && !second && !doubt.test(text) ? first : undefined
}

/** Whether two texts say that a signal is on and off under the very same condition. */
export function contradicts(said: Condition, meant: Condition): boolean {
  return said.on !== meant.on && said.words.length > 0 && said.words.join(' ') === meant.words.join(' ')
}
