import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'
import { gluedLetters, namingWords, notSi, rightUnits, symbolsOfUnits } from './words/units.ts'

const number = String.raw`[-+−±]?\d(?:[\d.,]*\d)?`
const notInside = String.raw`(?<![\p{L}\p{N}_.,\-/])`
const space = String.raw`[\s\u00A0\u2009\u202F]*`
const measure = new RegExp(
  String.raw`${notInside}(${number}(?:[–-](?!0\d)${number})?)(${space})((?:[º°][\s\u00A0]?)?[A-Za-zµμΩ]+)(?![\p{L}\p{N}_])(?!-\p{L})`,
  'gu',
)
const degrees = new RegExp(
  String.raw`${notInside}(${number})${space}(?:degrees?|degs?\.?)[\s\u00A0]+(C|F|Celsius|Fahrenheit|centigrade)(?![\p{L}\p{N}])`,
  'giu',
)

/** Units and numbers of a sentence that are written against the SI. Names, code and labels in quotation marks are left alone. */
export function unitStyle(view: SentenceView): PlainFinding[] {
  const { block, sentence, words, language, languageTag } = view
  if (!/\d/.test(sentence.text)) return []
  const quoted = words.filter((word) => word.quoted)
  const isQuoted = (start: number) => quoted.some((word) => start >= word.start && start < word.end)
  const found: PlainFinding[] = []
  const text = block.text.slice(0, sentence.end)
  for (const { index, 0: all, 1: number = '', 2: letter = '' } of matches(text, degrees, sentence.start)) {
    const symbol = `°${letter.charAt(0).toUpperCase() === 'F' ? 'F' : 'C'}`
    if (!isQuoted(index)) found.push(findingAt(view, 'unit-form', { start: index, end: index + all.length }, { suggestion: `${number} ${symbol}` }))
  }
  for (const { index, 0: all, 1: number = '', 2: space = '', 3: unit = '' } of matches(text, measure, sentence.start)) {
    const span = { start: index, end: index + all.length }
    if (isQuoted(index) || isName(text.slice(sentence.start, index), space, unit) || found.some(({ start }) => start === index)) continue
    const finding = judge({ number, space, unit, language, languageTag })
    if (finding?.kind === 'unit-not-si' && hasSiBeside(text, sentence.start, span)) continue
    if (finding) found.push(findingAt(view, finding.kind, span, finding))
  }
  return found
}

function* matches(text: string, pattern: RegExp, from: number): Generator<RegExpExecArray> {
  for (let at = from; ; ) {
    pattern.lastIndex = at
    const match = pattern.exec(text)
    if (!match) return
    at = pattern.lastIndex
    yield match
  }
}

/** A single letter right behind a number can be a name: "terminal 2A", "step 3h"; so can one that begins the sentence. */
function isName(before: string, space: string, unit: string): boolean {
  if (space !== '' || unit.length !== 1) return false
  const word = /(\p{L}+)\.?\s*$/u.exec(before)?.[1]?.toLowerCase()
  return before.trim() === '' || (word !== undefined && namingWords.has(word))
}

interface Measure {
  number: string
  space: string
  unit: string
  language: string
  languageTag: string
}

type Judgement = Pick<PlainFinding, 'kind' | 'sure'> & { suggestion?: string }

function judge(measure: Measure): Judgement | undefined {
  const { number, space, unit } = measure
  const plain = unit.replace(/[\s\u00A0]/g, '').replace('º', '°')
  if (space === '' && plain.length === 1 && !gluedLetters.has(plain)) return undefined
  if (notSi.has(plain)) return { kind: 'unit-not-si', sure: false }
  const right = rightUnits.get(plain) ?? (symbolsOfUnits.has(plain) ? plain : undefined)
  if (right === undefined) return undefined
  const written = rightNumber(measure)
  if (right !== unit || space === '') return { kind: 'unit-form', sure: true, suggestion: `${written ?? number} ${right}` }
  if (written === undefined) return undefined
  // Spanish takes both signs; the rest of the page tells.
  return { kind: 'decimal-sign', sure: measure.language !== 'es', suggestion: `${written}${space}${unit}` }
}

const withComma = new Set(['es', 'de', 'fr', 'it', 'pt', 'nl'])
/** Countries of Spanish that write a point. From memory. */
const withPoint = /^es-(?:MX|US|PR|GT|HN|NI|PA|SV|DO|419)$/i

/** The decimal sign that readers know; nothing where both are in use, as in Switzerland, or the language is not known. */
function decimalSign({ language, languageTag }: Measure): ',' | '.' | undefined {
  if (/-CH$/i.test(languageTag)) return undefined
  if (language === 'en' || withPoint.test(languageTag)) return '.'
  return withComma.has(language) ? ',' : undefined
}

/** The number with the decimal sign of the language, where it has the other one. Three digits behind it can be thousands. */
function rightNumber(measure: Measure): string | undefined {
  const [, whole, sign, decimals] = /^([-+−±]?\d+)([.,])(\d+)$/.exec(measure.number) ?? []
  if (!whole || !sign || !decimals || (decimals.length === 3 && !/^[-+−±]?0$/.test(whole))) return undefined
  const expected = decimalSign(measure)
  return expected === undefined || sign === expected ? undefined : `${whole}${expected}${decimals}`
}

/** "6 bar (87 psi)", "87 psi (6 bar)": whoever needs the other unit finds it. */
function hasSiBeside(text: string, from: number, { start, end }: { start: number; end: number }): boolean {
  const before = text.slice(from, start)
  const open = before.lastIndexOf('(')
  if (open > before.lastIndexOf(')') && /\d/.test(before.slice(0, open).slice(-20))) return true
  return /=\s*$/.test(before) || /^\s*[([/=]\s*[-+−±]?\d/.test(text.slice(end))
}
