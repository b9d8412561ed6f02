/** How a number format shows numbers, as far as the value that is meant depends on it. */
export type NumberFormat =
  | { kind: 'plain' }
  /** Digits with fixed signs between them, such as `000-000`: one part a placeholder or a text. */
  | { kind: 'code'; parts: readonly string[]; digits: number }
  | { kind: 'decimals'; decimals: number; thousands: boolean; percent: boolean; before: string; after: string }
  | { kind: 'date'; date: boolean; time: boolean; elapsed: boolean }

const plain: NumberFormat = { kind: 'plain' }
const day: NumberFormat = { kind: 'date', date: true, time: false, elapsed: false }
const clock: NumberFormat = { kind: 'date', date: false, time: true, elapsed: false }
const decimals = (count: number, thousands = false, percent = false, [before, after] = ['', '']): NumberFormat => ({
  kind: 'decimals',
  decimals: count,
  thousands,
  percent,
  before,
  after,
})

/** The formats that a workbook names by number alone. Source: ECMA-376 part 1, 18.8.30; 27 to 36 and 50 to 58 are dates in East Asian ones. */
export function builtInFormat(id: number): NumberFormat {
  if (id === 1 || id === 2) return decimals(id === 1 ? 0 : 2)
  if (id === 3 || id === 4) return decimals(id === 3 ? 0 : 2, true)
  if (id === 9 || id === 10) return decimals(id === 9 ? 0 : 2, false, true)
  if (id === 22) return { kind: 'date', date: true, time: true, elapsed: false }
  if ((id >= 14 && id <= 17) || (id >= 27 && id <= 36) || (id >= 50 && id <= 58)) return day
  if (id === 46) return { kind: 'date', date: false, time: true, elapsed: true }
  if ((id >= 18 && id <= 21) || id === 45 || id === 47) return clock
  return plain
}

/** Reads a format code. Only its first section counts, which is the one for numbers above zero. */
export function readFormat(code: string): NumberFormat {
  const parts = sectionParts(code)
  if (!parts) return plain
  const elapsed = parts.some((part) => /^\[(h+|m+|s+)\]$/i.test(part))
  const signs = parts.filter((part) => !part.startsWith('"') && !part.startsWith('['))
  const letters = signs.join('').replace(/am\/pm|a\/p/gi, 'h')
  if (elapsed || /[ymdhs]/i.test(letters)) {
    if (/general/i.test(letters) || letters.includes('@')) return plain
    const time = elapsed || /[hs]/i.test(letters)
    // Between hours or seconds m is minutes; alone it is months.
    return { kind: 'date', date: /[yd]/i.test(letters) || !time, time, elapsed }
  }
  const digits = signs.filter((sign) => sign === '0').length
  const shown = signs.join('')
  if (digits > 1 && /^[0\-/ ().]+$/.test(shown) && !/^0+\.0+$/.test(shown))
    return { kind: 'code', parts: parts.filter((part) => !part.startsWith('[')), digits }
  const [, thousands, whole, places, percent] = /^(#,##)?(#*0)(\.0+)?(%)?$/.exec(shown) ?? []
  return whole === undefined ? plain : decimals((places?.length ?? 1) - 1, thousands !== undefined, percent !== undefined, textsAround(parts))
}

/** The texts before and after the placeholders. */
function textsAround(parts: readonly string[]): [string, string] {
  const first = parts.findIndex((part) => /^[#0]$/.test(part))
  const texts = (of: readonly string[]) => of.map((part) => (part.startsWith('"') ? part.slice(1, -1) : '')).join('')
  return [texts(parts.slice(0, first)), texts(parts.slice(first))]
}

/** The first section cut into placeholders, `"texts"` and `[conditions]`; undefined where it has a condition on the value. */
function sectionParts(code: string): string[] | undefined {
  const parts: string[] = []
  for (const [part] of code.matchAll(/"[^"]*"?|\[[^\]]*\]?|\\.|[_*].|./gs)) {
    if (part === ';') break
    if (/^\[[<>=]/.test(part)) return undefined
    // A space as wide as a sign, and a sign that fills the cell, are no part of what is read.
    if (/^[_*]./s.test(part)) continue
    if (part.startsWith('"')) parts.push(part.endsWith('"') && part.length > 1 ? part : `${part}"`)
    else parts.push(part.startsWith('\\') ? `"${part.slice(1)}"` : part)
  }
  return parts
}
