import type { Drawing, SheetText } from '../model/machine.ts'
import { slug } from './address.ts'

/** A text with its middle, the size of its letters and its turn, as on the sheet. */
export type PlacedText = readonly [text: string, x: number, y: number, fontSize: number, angleDeg: number]

/** What the sheets of a drawing say, for the search in it. */
export interface DrawingTexts {
  sheet: number
  /** From top to bottom, and from left to right. */
  texts: readonly PlacedText[]
}

declare global {
  interface Window {
    /** Set by the script of the drawing on whose page we are. */
    FettleDrawing?: readonly DrawingTexts[]
  }
}

/** Path of the script with the texts of a drawing in the site. */
export function drawingTextsFile(drawing: string): string {
  return `sheets/${slug(drawing)}.texts.js`
}

/** The texts of a drawing as a classic script, since a page from disk can load nothing else. */
export function drawingTextsScript({ sheetList }: Drawing): string {
  const sheets = sheetList.map(
    ({ number, texts }): DrawingTexts => ({ sheet: number, texts: texts.toSorted((a, b) => a.y - b.y || a.x - b.x).map(placed) }),
  )
  return `window.FettleDrawing=${JSON.stringify(sheets)}\n`
}

const placed = ({ text, x, y, fontSize, angleDeg }: SheetText): PlacedText => [text, tenth(x), tenth(y), tenth(fontSize), tenth(angleDeg)]

const tenth = (value: number) => Math.round(value * 10) / 10
