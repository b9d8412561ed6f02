import type { Token } from './block.ts'
import { isAbbreviation } from './language/abbreviations.ts'
import { isUnit } from './unit-symbols.ts'

/** Abbreviations in capitals that have a vowel, and are said letter by letter. */
const spelled = new Set(
  `AC AI AO ASI CE CIP CPU DI EMC EMI EN EPDM ESD EU FAQ FIFO GUI HMI IEC IEEE IO IP ISO KPI LAN LED LIFO MRO NBR OEE OEM PE PID PUR
  SCADA SIL SPS TPE UL URL USB UV VAC VDE ANSI OSHA ASME DIN NEMA HVAC API ID IR MCU OLE OPC ROM UDP ATEX`.split(/\s+/),
)
/** A longer run is a key or a mistake, and nothing that can be said. */
const longestWord = 60
const latin = /^[A-Za-zÀ-ÖØ-öø-ÿ]+$/
const vowel = /[aeiouyÀ-ÖØ-öø-ÿ]/i
const ordinal = /^\d+(?:st|nd|rd|th|er|ère|e|º|ª)$/
const address = /:\/\/|^www\.|^mailto:|^[\w.+-]+@[\w-]+\.|^[\w-]+(?:\.[\w-]+)*\.(?:com|org|net|info|eu)(?:\/\S*)?$/i
const path = /\\|^(?:~|\.{1,2})?\/[\w-]+[/.]\w|^[A-Za-z]:\/|^[\w.-]+(?:\/[\w.-]+)+\.[a-z]{2,4}$/
const fileName = /^[\w-]+(?:\.[\w-]+)*\.(?:json|xml|csv|pdf|txt|ya?ml|exe|prg|zip|xlsx?|docx?|mdx?|ini|log|dll|bin|hex|dxf|dwg|svg|png|jpe?g)$/i
const dotted = /^\p{L}{1,2}(?:\.-?\p{L}{1,2})+$/u
const lettersBySlash = /^\p{Lu}{1,2}(?:\/\p{Lu}{1,2})+$/u
/** `3-phase`, `IP54-rated`: the last part is a word. */
const endsInWord = /[-‐‑]\p{Ll}{3,}$/u

/**
 * What a text without its edge punctuation is; `undefined` for an address of the web and a path, which nobody reads as words.
 * `dot`: a dot follows. `last`: nothing follows in what is read.
 */
export function kindOf(text: string, { dot, last }: { dot: boolean; last: boolean }): Token['kind'] | undefined {
  if (latin.test(text)) return text.length > longestWord ? 'identifier' : kindOfLetters(text, dot && !last)
  if (!/[\p{L}\p{N}]/u.test(text)) return undefined
  if (address.test(text) || path.test(text)) return undefined
  if (text.length > longestWord) return 'identifier'
  if (!/\p{L}/u.test(text) || ordinal.test(text)) return 'number'
  if (isGluedMeasure(text)) return 'measure'
  if (fileName.test(text) || /_/.test(text)) return 'identifier'
  if (/\d/.test(text)) return endsInWord.test(text) ? 'word' : 'identifier'
  if (dotted.test(text) || lettersBySlash.test(text)) return 'abbreviation'
  return dot && !last && isAbbreviation(text.toLowerCase()) ? 'abbreviation' : 'word'
}

function kindOfLetters(text: string, dotInside: boolean): Token['kind'] {
  if (!vowel.test(text)) return text.length === 1 ? 'identifier' : 'abbreviation'
  if (text === text.toUpperCase() && spelled.has(text)) return 'abbreviation'
  return dotInside && isAbbreviation(text.toLowerCase()) ? 'abbreviation' : 'word'
}

function isGluedMeasure(text: string): boolean {
  const [, unit] = /^[-+−]?\d[\d.,/…–-]*?-?(\D+)$/.exec(text) ?? []
  return unit !== undefined && isUnit(unit)
}
