/** A rectangle round a text of a sheet, in its own turn: for marks and for what is touched. In the units of the sheet. */
export interface TextBox {
  x: number
  y: number
  width: number
  height: number
  transform: string
}

/** The box of a text of which the middle is known. Letters of drawings are about 0.6 of their size wide. */
export function textBox(text: string, x: number, y: number, fontSize: number, angleDeg: number): TextBox {
  const halfWidth = text.length * fontSize * 0.32 + 8
  const halfHeight = fontSize * 0.5 + 7
  return {
    x: -halfWidth,
    y: -halfHeight,
    width: halfWidth * 2,
    height: halfHeight * 2,
    transform: `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${angleDeg.toFixed(1)})`,
  }
}
