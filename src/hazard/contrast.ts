/**
 * Contrast of two sRGB colours, `#rrggbb`, from 1 to 21; the order does not matter. RangeError for what is no colour.
 * Source: WCAG 2.2, definitions of contrast ratio and relative luminance.
 */
export function contrastRatio(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].toSorted((x, y) => x - y)
  return (high + 0.05) / (low + 0.05)
}

/** Least contrast of text by WCAG 2.2, 1.4.3 and 1.4.6. Large is 18 pt, or 14 pt in bold, and more. */
export const leastContrast = { text: 4.5, largeText: 3, enhancedText: 7 } as const

/** Relative luminance, 0 (black) to 1 (white). */
function luminance(colour: string): number {
  if (!/^#[0-9a-f]{6}$/i.test(colour)) throw new RangeError(`no colour: ${colour}`)
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255))
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

const linear = (channel: number) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4)
