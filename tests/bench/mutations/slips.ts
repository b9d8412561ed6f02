import type { Random } from '../random.ts'

/** A slip of the hand in a name. Undefined when the name has no place for it. */
export type Slip = (name: string, random: Random) => string | undefined

export const otherDigit: Slip = (name, random) => {
  const at = random.pick(places(name, /\d/g))
  return at === undefined ? undefined : put(name, at, 1, String((Number(name[at]) + 1 + random.below(9)) % 10))
}

export const neighboursSwapped: Slip = (name, random) => {
  const at = random.pick(places(name, /[\p{L}\p{N}](?=[\p{L}\p{N}])/gu).filter((index) => name[index] !== name[index + 1]))
  return at === undefined ? undefined : put(name, at, 2, `${name[at + 1]}${name[at]}`)
}

export const letterForZero: Slip = (name, random) => {
  const at = random.pick(places(name, /0/g))
  return at === undefined ? undefined : put(name, at, 1, 'O')
}

export const enDash: Slip = (name, random) => {
  const at = random.pick(places(name, /-/g))
  return at === undefined ? undefined : put(name, at, 1, '–')
}

export const leftOut: Slip = (name, random) => {
  const at = random.pick(places(name, /[\p{L}\p{N}]/gu))
  return name.length < 2 || at === undefined ? undefined : put(name, at, 1, '')
}

export const doubled: Slip = (name, random) => {
  const at = random.pick(places(name, /[\p{L}\p{N}]/gu))
  return at === undefined ? undefined : put(name, at, 0, name[at] ?? '')
}

export const lowerCase: Slip = (name) => (name.toLowerCase() === name ? undefined : name.toLowerCase())

export const hyphenPutIn: Slip = (name) => (/^[A-Z]+\d/.test(name) ? name.replace(/^[A-Z]+/, '$&-') : undefined)

const places = (name: string, pattern: RegExp) => [...name.matchAll(pattern)].map(({ index }) => index)
const put = (name: string, at: number, length: number, text: string) => name.slice(0, at) + text + name.slice(at + length)

/** The last two letters swapped, or the last one lost where they are the same. */
export const misspelt = (word: string) => (word.at(-1) === word.at(-2) ? word.slice(0, -1) : word.replace(/(.)(.)$/, '$2$1'))
