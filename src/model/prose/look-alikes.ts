/** Letters of other scripts that look like a Latin capital on a screen. Source: Unicode TR 39, confusables, from memory. */
const latin: Readonly<Record<string, string>> = {
  ...pairs('АВЕЅІЈКМНОРСТУХ', 'ABESIJKMHOPCTYX'),
  ...pairs('аеорсухіј', 'aeopcyxij'),
  ...pairs('ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ', 'ABEZHIKMNOPTYX'),
  ...pairs('ο', 'o'),
}

function pairs(from: string, to: string): Record<string, string> {
  return Object.fromEntries([...from].map((letter, index) => [letter, to[index] ?? letter]))
}

/** Any dash or minus that is not the hyphen of a keyboard. */
export const dashes = '\\u2010-\\u2015\\u2212\\uFE58\\uFE63\\uFF0D'
/** Spaces that keep words together, and characters that nobody sees. */
export const unseen = '\\u00A0\\u2007-\\u200D\\u202F\\u2060\\uFEFF\\u00AD'

const digitLike = /\d|(?<![\p{Ll}--[ol]])[OolI](?![\p{Ll}--[ol]])/v

/** Whether a text holds a digit, or a letter that could stand for one and is not inside a word of small letters. */
export const couldHoldNumber = (text: string): boolean => digitLike.test(text)

const dash = new RegExp(`[${dashes}]`, 'gu')
const nothing = new RegExp(`[${unseen}]`, 'gu')

/** The text with plain characters for look-alikes: a hyphen for each dash, Latin for Greek and Cyrillic, no unseen characters. */
export function plainCharacters(text: string): string {
  return text
    .replace(nothing, '')
    .replace(dash, '-')
    .replace(/[\u0370-\u04FF]/gu, (letter) => latin[letter] ?? letter)
    .normalize('NFKC')
}

/** The one form of all texts that look the same: plain characters, the letter O as zero, the letters I and l as one. */
export function looks(text: string): string {
  return plainCharacters(text).replace(/[Oo]/g, '0').replace(/[Il]/g, '1')
}

/** The characters in which a text differs from the name that it looks like, named: `the letter O`, `U+2013 en dash`. */
export function oddCharacters(text: string, name: string): string[] {
  const odd: string[] = []
  let at = 0
  for (const character of text) {
    const plain = plainCharacters(character)
    if (plain === '') {
      odd.push(nameOf(character))
      continue
    }
    if (character !== name[at]) odd.push(nameOf(character))
    at += plain.length
  }
  return [...new Set(odd)]
}

const names: Readonly<Record<string, string>> = {
  O: 'the letter O',
  o: 'the letter o',
  I: 'the capital letter I',
  l: 'the small letter l',
  '0': 'the digit 0',
  '1': 'the digit 1',
  '\u00A0': 'no-break space',
  '\u00AD': 'soft hyphen',
  '\u2010': 'hyphen',
  '\u2011': 'no-break hyphen',
  '\u2012': 'figure dash',
  '\u2013': 'en dash',
  '\u2014': 'em dash',
  '\u2212': 'minus sign',
  '\u200B': 'zero-width space',
  '\u202F': 'narrow no-break space',
}

function nameOf(character: string): string {
  const point = character.codePointAt(0) ?? 0
  const named = names[character]
  if (point < 0x80) return named ?? `\`${character}\``
  const code = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`
  if (named) return `${code} ${named}`
  if (point >= 0x370 && point < 0x400) return `${code} Greek letter`
  return point >= 0x400 && point < 0x530 ? `${code} Cyrillic letter` : code
}
