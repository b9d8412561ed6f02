/** A tag and what a writer made of it. */
export interface Slip {
  was: string
  is: string
}

/** Slips of writers and of programs, each at a place in a text that a number picks. */
const slips: readonly ((tag: string, pick: number) => string)[] = [
  (tag, pick) => replaceDigit(tag, pick, (digit) => String((Number(digit) + 1 + (pick % 9)) % 10)),
  (tag, pick) => replaceDigit(tag, pick, () => ''),
  (tag, pick) => replaceDigit(tag, pick, (digit) => digit + digit),
  (tag, pick) => replaceLetter(tag, pick, (letter) => String.fromCharCode(65 + ((letter.charCodeAt(0) - 64 + (pick % 25)) % 26))),
  (tag) => tag.replace(/(\d)(\d)$/, '$2$1'),
  (tag) => tag.replace(/0/, 'O'),
  (tag) => tag.replace(/1/, 'l'),
  (tag) => tag.replace(/(?<=[A-Z])(?=\d)/, '\u2013'),
  (tag) => tag.replace(/(?<=[A-Z])(?=\d)/, '-'),
  (tag) => tag.replace(/(?<=[A-Z])(?=\d)/, '\u00A0'),
  (tag) => tag.replace(/(?<=[A-Z])(?=\d)/, ' '),
  (tag) => tag.toLowerCase(),
  (tag) => tag.replace(/[CEHMOPST]/, (letter) => 'СЕНМОРЅТ'['CEHMOPST'.indexOf(letter)] ?? letter),
]

function replaceDigit(tag: string, pick: number, by: (digit: string) => string): string {
  return replaceAt(tag, /\d/g, pick, by)
}

function replaceLetter(tag: string, pick: number, by: (letter: string) => string): string {
  return replaceAt(tag, /[A-Z]/g, pick, by)
}

function replaceAt(tag: string, what: RegExp, pick: number, by: (character: string) => string): string {
  const spots = [...tag.matchAll(what)]
  const spot = spots[pick % Math.max(1, spots.length)]
  return spot ? tag.slice(0, spot.index) + by(spot[0]) + tag.slice(spot.index + 1) : tag
}

/** The same slips in every run. A slip that changes nothing is left out. */
export function seededSlips(tags: readonly string[], count: number): Slip[] {
  const found: Slip[] = []
  // A linear congruential generator with the constants of Numerical Recipes.
  let state = 20260914
  const next = (below: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
  while (found.length < count) {
    const was = tags[next(tags.length)] ?? ''
    const is = slips[next(slips.length)]?.(was, next(1000)) ?? was
    if (is !== was) found.push({ was, is })
  }
  return found
}
