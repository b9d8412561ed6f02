import type { Place } from '../source/place.ts'

/** Widest line that a frame shows; longer lines are cut round the caret. */
const widest = 100

/** The author's line with carets under the place. Undefined when the text is not at hand. */
export function frame(text: string | undefined, place: Place): string | undefined {
  const line = text === undefined ? undefined : lineOf(text, place.line)
  if (line === undefined) return undefined
  const start = place.column - 1
  const end = place.endLine === place.line ? Math.max(place.endColumn - 1, start + 1) : line.length
  const from = start > widest * 0.7 ? Math.max(0, Math.min(start - Math.round(widest / 2), line.length - widest)) : 0
  const to = from + widest
  const shown = (from > 0 ? '…' : '') + line.slice(from, to) + (line.length > to ? '…' : '')
  const lead = columns((from > 0 ? '…' : '') + line.slice(from, start))
  const carets = Math.max(1, columns(line.slice(start, Math.min(end, to))))
  const number = String(place.line)
  const margin = ' '.repeat(number.length)
  return `  ${number} | ${visible(shown)}\n  ${margin} | ${' '.repeat(lead)}${'^'.repeat(carets)}`
}

function lineOf(text: string, number: number): string | undefined {
  return text.split(/\r\n|\n|\r/)[number - 1]
}

/** Control characters would move the cursor: each is shown as a sign of its own width. */
function visible(text: string): string {
  return text.replace(/\t/g, '  ').replace(/[\p{Cc}\p{Cf}]/gu, '·')
}

/** How many columns a terminal takes for a text: two for wide characters, none for combining marks. */
function columns(text: string): number {
  let width = 0
  for (const character of text) {
    if (character === '\t') width += 2
    else if (/\p{Mn}|\u200d|\ufe0f/u.test(character)) width += 0
    else
      width += /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Extended_Pictographic}/u.test(
        character,
      )
        ? 2
        : 1
  }
  return width
}
