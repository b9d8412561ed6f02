import { consequenceVerb, type SignalWord, warnsOfInjury } from './signal-word.ts'
import { wordsOfLanguage } from './words-of-language.ts'

/** A stretch of a text: offsets from 0, end exclusive. */
export interface Span {
  start: number
  end: number
}

/**
 * Words that say how sure the harm is, where they say it otherwise than the signal word: `could` under DANGER, `will`
 * under WARNING and CAUTION. Known for English and Spanish; nothing is found in another language.
 * Source: ANSI Z535.6, clause 4, definitions of the words.
 */
export function wrongVerbs(consequence: string, language: string, word: SignalWord): Span[] {
  const verbs = languages[language]?.verbs
  if (!verbs || !warnsOfInjury(word)) return []
  return spansOf(consequence, consequenceVerb(word) === 'will' ? verbs.could : verbs.will)
}

/** What the verb of a word is in a language: `will` is `will` in English, `-rá` in Spanish. */
export function verbIn(language: string, word: SignalWord): string | undefined {
  return languages[language]?.verbs.names[consequenceVerb(word)]
}

/** Whether an avoidance tells no act: every sentence says `be careful`, `use caution` or the like, and no more. */
export function isVague(avoidance: string, language: string): boolean {
  const vague = languages[language]?.vague
  const sentences = avoidance.split(/[.!?;]+(?:\s+|$)/).filter((sentence) => /\p{L}/u.test(sentence))
  return vague !== undefined && sentences.length > 0 && sentences.every((sentence) => vague.test(sentence.trim()))
}

/** Words in a text that speak of harm to a person. None of them may stand under NOTICE. Source: ANSI Z535.6, clause 4. */
export function injuryWords(text: string, language: string): Span[] {
  const injury = languages[language]?.injury
  return injury ? spansOf(text, injury) : []
}

/** Signal words of a language that are set as one in a text: `WARNING: hot`, `DANGER!`. The word of a tag or sign, as in `DANGER tag`, is none. */
export function signalWordsIn(text: string, language: string): Span[] {
  const table = wordsOfLanguage(language)
  if (!table) return []
  const words = [...new Set(Object.values(table))].join('|')
  return spansOf(text, new RegExp(`(?<![\\p{L}\\p{N}-])(?:${words})(?=\\s*(?:[:!.–—]|-\\s|$))`, 'gu'))
}

/**
 * The word with which a paragraph begins as if it were a safety message: a word of injury of the language before `:` or
 * `!`, in any case, or the word for a mere note where the paragraph speaks of harm to a person.
 */
export function plainWarning(text: string, language: string): Span | undefined {
  const { danger, warning, caution, notice } = wordsOfLanguage(language) ?? {}
  const begins = (words: readonly (string | undefined)[]) =>
    new RegExp(`^\\s*(?:${words.filter((it) => it !== undefined).join('|')})(?=\\s*[:!])`, 'iu').exec(text)?.[0]
  const word = danger ? begins([danger, warning, caution]) : undefined
  const note = word === undefined && injuryWords(text, language).length > 0 ? begins([notice, ...(languages[language]?.notes ?? [])]) : undefined
  const found = word ?? note
  return found === undefined ? undefined : { start: found.length - found.trimStart().length, end: found.length }
}

/** Whether a text of three words and more stands in capitals throughout. Words with digits, such as tags, do not count. */
export function isInCapitals(text: string): boolean {
  const words = text.split(/[^\p{L}\p{N}]+/u).filter((word) => /^\p{L}{2,}$/u.test(word))
  return words.length >= 3 && words.every((word) => word === word.toUpperCase() && word !== word.toLowerCase())
}

function spansOf(text: string, pattern: RegExp): Span[] {
  return [...text.matchAll(pattern)].map(({ index, 0: { length } }) => ({ start: index, end: index + length }))
}

interface Lints {
  verbs: { will: RegExp; could: RegExp; names: { will: string; could: string } }
  vague: RegExp
  /** Words that head a remark. */
  notes: readonly string[]
  injury: RegExp
}

/** Common practice of technical writing; no standard lists words. */
const languages: Readonly<Record<string, Lints>> = {
  en: {
    verbs: { will: /\bwill\b/gi, could: /\b(?:could|may|might|can)\b/gi, names: { will: 'will', could: 'could' } },
    vague:
      /^(?:(?:always|please|you must)\s+)?(?:be\s+(?:very\s+|always\s+)?(?:careful|cautious|alert|aware)|(?:take|use|exercise)\s+(?:\w+\s+)?(?:care|caution)|(?:proceed|work|act)\s+(?:with\s+(?:\w+\s+)?(?:care|caution)|carefully|cautiously)|pay\s+attention|stay\s+alert|watch\s+out)(?!\s+(?:that|to|not)\b)[^,:–—]*$/i,
    notes: ['note', 'important', 'tip', 'hint', 'remark', 'attention'],
    injury:
      /(?<!\b(?:no|without|not an?)\s(?:\w+\s)?)\b(?:injur(?:y|ies|e[ds]?)|kills?|death|fatal(?:ly)?|scalds?|electric shocks?|(?:crush|burn|cut|trap|hit|hurt|blind)(?:s|es)?\s+(?:you|people|persons?|someone|(?:your|a|the)\s+(?:hand|finger|arm|foot|eye|face|skin|head)s?))\b/gi,
  },
  es: {
    verbs: {
      // Third persons of the future tense; three nouns end like them.
      will: /(?<!\p{L})(?!(?:refr|alacr|azafr)án(?!\p{L}))\p{L}+rán?(?!\p{L})/giu,
      could: /(?<!\p{L})(?:podrían?|pueden?|pudieran?)(?!\p{L})/giu,
      names: { will: 'the future tense (`-rá`)', could: 'podría' },
    },
    vague:
      /^(?:(?:siempre|por favor)\s+)?(?:tenga\s+(?:\p{L}+\s+)?cuidado|preste\s+(?:\p{L}+\s+)?atención|(?:proceda|trabaje|actúe)\s+con\s+(?:\p{L}+\s+)?(?:cuidado|precaución|prudencia)|sea\s+prudente|extreme\s+(?:el|las)\s+(?:cuidado|precauciones))(?!\s+(?:de|en|para)?\s*(?:que|no)(?!\p{L}))[^,:–—]*$/iu,
    notes: ['nota', 'importante', 'consejo', 'observación'],
    injury:
      /(?<!(?:sin|ninguna)\s)(?<!\p{L})(?:lesión|lesiones|heridas?|lesionar\p{L}*|herir\p{L}*|matar\p{L}*|muertes?|mortal(?:es)?|quemaduras?|descargas? eléctricas?|(?:aplastar|quemar|cortar|golpear|atrapar|cegar)(?:le|les)|(?:aplast|quem|cort)ar la (?:mano|piel|cara|cabeza))(?!\p{L})/giu,
  },
}
