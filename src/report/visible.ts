/** A character as a report shows it, and the columns that a terminal takes for it. */
export interface Shown {
  text: string
  columns: 0 | 1 | 2
}

/** Characters of East Asian width W and F, and emoji. Source: Unicode Standard Annex 11. */
const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1b000}-\u{1b2ff}\u{1f200}-\u{1f2ff}\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u

/**
 * The characters of a text. A control or format character would move the cursor, change its colour or turn
 * the line round, so it is shown as a dot; a tab is two spaces.
 */
export function shownCharacters(text: string): Shown[] {
  return [...text].map((character) => {
    if (character === '\t') return { text: '  ', columns: 2 }
    if (/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u.test(character)) return { text: '·', columns: 1 }
    if (/\p{Mn}|\p{Me}/u.test(character)) return { text: character, columns: 0 }
    return { text: character, columns: wide.test(character) ? 2 : 1 }
  })
}

/** Longest message that is shown whole, in UTF-16 units: a cell of a broken file can be a whole page. */
const longest = 400

/** A message as one line without control characters, whatever an author's text put into it. */
export function oneLine(text: string): string {
  const cut = text.length > longest ? `${text.slice(0, longest - 1)}…` : text
  return shownCharacters(cut)
    .map((it) => it.text)
    .join('')
}
