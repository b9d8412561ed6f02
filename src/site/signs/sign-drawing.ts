import { type SignKind, signKindOf } from '../../hazard/safety-sign.ts'
import { pictograms } from './pictograms.ts'

/**
 * A registered sign as the inside of an SVG of 100 × 100, in our own drawing of the registered meaning; undefined for
 * a code that has no drawing. Shapes and shares of colour: ISO 3864-1, from memory: a yellow triangle with a black
 * band, a blue disc, a red ring with a bar at 45° from the upper left.
 */
export function signDrawing(code: string): string | undefined {
  const pictogram = Object.hasOwn(pictograms, code) ? pictograms[code] : undefined
  const kind = signKindOf(code)
  return pictogram === undefined || kind === undefined ? undefined : shapes[kind]?.(pictogram)
}

/** Codes that have a drawing, in code-unit order. */
export const drawnSigns: readonly string[] = Object.keys(pictograms).sort()

/** Colours by RAL 1003, 5005, 3001; black is #000000. */
export const signColours = { yellow: '#f9a800', blue: '#005387', red: '#9b2423', black: '#000000', white: '#ffffff' } as const
const { yellow, blue, red, black, white } = signColours

/** Equilateral: 96 wide, 83.14 high. The band is 4 wide. */
export const triangle = { outer: '50,6.4 98,89.54 2,89.54', inner: '50,14.4 91.07,85.54 8.93,85.54' } as const

const shapes: Partial<Readonly<Record<SignKind, (pictogram: string) => string>>> = {
  warning: (pictogram) =>
    `<polygon points="${triangle.outer}" fill="${black}"/><polygon points="${triangle.inner}" fill="${yellow}"/><g fill="${black}" stroke="none">${pictogram}</g>`,
  mandatory: (pictogram) => `<circle cx="50" cy="50" r="48" fill="${blue}"/><g fill="${white}" stroke="none">${pictogram}</g>`,
  // The bar lies over the pictogram.
  prohibition: (pictogram) =>
    `<circle cx="50" cy="50" r="48" fill="${white}"/><g fill="${black}" stroke="none">${pictogram}</g><circle cx="50" cy="50" r="43" fill="none" stroke="${red}" stroke-width="10"/><line x1="19.6" y1="19.6" x2="80.4" y2="80.4" stroke="${red}" stroke-width="8"/>`,
}
