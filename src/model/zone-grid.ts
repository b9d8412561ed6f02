import type { Sheet, SheetText } from './machine.ts'

/** The fields of a sheet, as letters down its side and numbers along its top name them. */
export interface ZoneGrid {
  /** In the order of the sheet: top to bottom, left to right. */
  letters: readonly string[]
  numbers: readonly string[]
  /** The field of a zone (`C4`), or a whole column (`4`), in the units of the viewBox; undefined when the grid has none such. */
  field(zone: string): { x: number; y: number; width: number; height: number } | undefined
}

interface Axis {
  names: readonly string[]
  /** Middle of the first field, and the distance from one to the next. */
  first: number
  step: number
}

/** What share of the sheet beside an edge is border, and what share the fields must cover at least. */
const border = 0.08
const covered = 0.7

/**
 * Reads the grid from the border texts of a sheet: ISO 5457 counts from the top left and leaves out I and O,
 * ASME Y14.1 counts from the bottom right. Both from memory. Undefined when a side cannot be read, or when two
 * opposite sides differ: then nothing is known about its zones.
 */
export function zoneGridOf({ viewBox, texts }: Pick<Sheet, 'viewBox' | 'texts'>): ZoneGrid | undefined {
  const { x, y, width, height } = viewBox
  const across = texts.filter(({ text }) => /^\d{1,2}$/.test(text)).map((it) => mark(it, (it.x - x) / width, (it.y - y) / height))
  const down = texts.filter(({ text }) => /^[A-Z]$/.test(text)).map((it) => mark(it, (it.y - y) / height, (it.x - x) / width))
  const numbers = axisOf(across, isCount)
  const letters = axisOf(down, isAlphabet)
  if (!numbers || !letters) return undefined
  return {
    letters: letters.names,
    numbers: numbers.names,
    field(zone) {
      const wholeColumn = /^\d/.test(zone)
      const row = wholeColumn ? 0 : letters.names.indexOf(zone.slice(0, 1))
      const column = numbers.names.indexOf(wholeColumn ? zone : zone.slice(1))
      if (row === -1 || column === -1) return undefined
      return {
        x: x + width * (numbers.first + (column - 0.5) * numbers.step),
        y: y + height * (letters.first + (row - 0.5) * letters.step),
        width: width * numbers.step,
        height: height * letters.step * (wholeColumn ? letters.names.length : 1),
      }
    },
  }
}

/** A text by its share of the way along an edge, and away from it. */
interface Mark {
  name: string
  along: number
  away: number
}

const mark = ({ text }: SheetText, along: number, away: number): Mark => ({ name: text, along, away })

/** The fields along two opposite edges; one of them is enough. */
function axisOf(marks: readonly Mark[], isSeries: (names: readonly string[]) => boolean): Axis | undefined {
  const near = readEdge(
    marks.filter(({ away }) => away >= 0 && away < border),
    isSeries,
  )
  const far = readEdge(
    marks.filter(({ away }) => away > 1 - border && away <= 1),
    isSeries,
  )
  return near && far && near.names.join() !== far.names.join() ? undefined : (near ?? far)
}

/** The line of marks along an edge, the outermost of them first. */
function readEdge(marks: readonly Mark[], isSeries: (names: readonly string[]) => boolean): Axis | undefined {
  const lines = Map.groupBy(marks, ({ away }) => Math.round(away * 200))
  for (const [at] of [...lines].sort(([a], [b]) => Math.abs(b - 100) - Math.abs(a - 100))) {
    const line = [...(lines.get(at) ?? []), ...(lines.get(at + 1) ?? [])].sort((a, b) => a.along - b.along)
    const [first, last] = [line[0], line.at(-1)]
    if (!first || !last || line.length < 2 || !isSeries(line.map(({ name }) => name))) continue
    const step = (last.along - first.along) / (line.length - 1)
    const regular = line.every(({ along }, index) => Math.abs(along - first.along - index * step) < step * 0.1)
    if (regular && step * line.length >= covered && step * line.length <= 1.02)
      return { names: line.map(({ name }) => name), first: first.along, step }
  }
  return undefined
}

const isCount = (names: readonly string[]) => eitherWay(names, (name, index) => Number(name) === index + 1)

/** I and O may be left out. */
function isAlphabet(names: readonly string[]): boolean {
  const series = ['ABCDEFGHIJKLMNOPQRSTUVWXYZ', 'ABCDEFGHJKLMNPQRSTUVWXYZ']
  return series.some((letters) => eitherWay(names, (name, index) => name === letters[index]))
}

const eitherWay = (names: readonly string[], fits: (name: string, index: number) => boolean) => names.every(fits) || names.toReversed().every(fits)
