/** How alike two texts are: 1 the same but for case and spaces, otherwise 0 to 1. */
export type Likeness = (a: string, b: string) => number

interface Features {
  plain: string
  /** Pairs of neighbouring characters, sorted. */
  pairs: readonly string[]
  numbers: string
}

/**
 * A measure that remembers what it has taken apart: twice the shared pairs of neighbouring characters over all of
 * them (Dice), halved when the numbers in the texts differ, because `Lift 1` is not `Lift 2`.
 */
export function likenessOf(): Likeness {
  const known = new Map<string, Features>()
  const featuresOf = (text: string) => {
    const found = known.get(text) ?? takeApart(text)
    known.set(text, found)
    return found
  }
  return (a, b) => {
    const [one, other] = [featuresOf(a), featuresOf(b)]
    if (one.plain === other.plain) return 1
    const all = one.pairs.length + other.pairs.length
    const share = all === 0 ? 0 : (2 * shared(one.pairs, other.pairs)) / all
    return one.numbers === other.numbers ? share : share / 2
  }
}

/** A text without what does not make it another one: case, and how much space stands between its words. */
export function plainText(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim()
}

function takeApart(text: string): Features {
  const plain = plainText(text)
  const characters = [...plain]
  const pairs = characters.slice(1).map((character, index) => `${characters[index]}${character}`)
  return { plain, pairs: pairs.sort(), numbers: (plain.match(/\d+/g) ?? []).join(' ') }
}

function shared(a: readonly string[], b: readonly string[]): number {
  let count = 0
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const [one = '', other = ''] = [a[i], b[j]]
    if (one === other) count++
    if (one <= other) i++
    if (other <= one) j++
  }
  return count
}
