import type { Drawing, SheetText } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const titleOfAnotherDrawing: Rule = {
  id: 'title-of-another-drawing',
  severity: 'warning',
  summary: 'A sheet has the title that the register gives to another drawing.',
  why: 'The reader looks for a drawing by its title, and opens the wrong one.',
  source: 'house rule',

  *check({ drawings }) {
    // One word alone is a heading on any sheet: `Inputs`.
    const titled = new Map<string, Drawing>()
    for (const drawing of drawings) for (const title of titlesOf(drawing)) if (title.includes(' ')) titled.set(title, drawing)
    const longest = Math.max(0, ...[...titled.keys()].map(({ length }) => length))
    for (const drawing of drawings) {
      const own = new Set(titlesOf(drawing))
      const found = drawing.sheetList.flatMap(({ texts }) => texts.filter(({ text }) => text.length <= 2 * longest))
      const shown = found.map((text) => ({ text, title: lettersOf(text.text) })).filter(({ title }) => titled.has(title))
      const [first, ...others] = shown
      const other = first && titled.get(first.title)
      // A list of drawings shows many titles, and a sheet may name another one beside its own.
      if (!first || !other || shown.some(({ title }) => own.has(title)) || others.some(({ title }) => titled.get(title) !== other)) continue
      yield problemOf(drawing, other, first.text)
    }
  },
}

function problemOf(drawing: Drawing, other: Drawing, text: SheetText) {
  const { number, title, place } = drawing
  return {
    message: `drawing \`${number.value}\` shows the title of \`${other.number.value}\`, "${text.text}"`,
    place: Object.values(title)[0]?.place ?? place,
    related: [
      { label: 'it stands on the sheet here', place: text.place },
      { label: `the title of \`${other.number.value}\` in the register`, place: Object.values(other.title)[0]?.place ?? other.place },
    ],
    help: 'correct the title in the register, or the file of the drawing',
  }
}

const titlesOf = ({ title }: Drawing) => Object.values(title).map(({ value }) => lettersOf(value))

/** Case, spaces and punctuation do not count. */
const lettersOf = (text: string) =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
