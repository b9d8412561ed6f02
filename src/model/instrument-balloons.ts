import type { SheetText } from './machine.ts'

/**
 * The balloons of a piping drawing: the letters of a loop tag with its number below them, joined to one text as
 * `PDSHH-1204A` in the middle of both. Source: ANSI/ISA-5.1, symbols of instruments.
 */
export function balloonsOf(texts: readonly SheetText[]): SheetText[] {
  const upright = texts.filter(({ angleDeg }) => Math.abs(angleDeg) < 1)
  const numbers = Map.groupBy(
    upright.filter(({ text }) => /^\d+[A-Z]{0,2}$/.test(text)),
    columnOf,
  )
  if (numbers.size === 0) return []
  return upright.flatMap((letters): SheetText[] => {
    if (!/^[A-Z]{1,6}$/.test(letters.text)) return []
    const column = columnOf(letters)
    const below = [column - 1, column, column + 1].flatMap((it) => numbers.get(it) ?? []).filter((number) => isBelow(letters, number))
    const [nearest] = below.sort((a, b) => a.y - b.y)
    return nearest ? [{ ...letters, text: `${letters.text}-${nearest.text}`, x: (letters.x + nearest.x) / 2, y: (letters.y + nearest.y) / 2 }] : []
  })
}

/** Texts that stand under one another are in the same column of this width, or in the next. */
const columnWidth = 20
const columnOf = ({ x }: SheetText) => Math.floor(x / columnWidth)

function isBelow(letters: SheetText, number: SheetText): boolean {
  const size = Math.max(letters.fontSize, number.fontSize)
  const [across, down] = [Math.abs(number.x - letters.x), number.y - letters.y]
  return across < Math.min(size * 0.6, columnWidth) && down > size * 0.5 && down < size * 2.2
}
