import type { PassagePart } from '../result.ts'

/** Reads a passage of Pagefind: text with a few entities, and `<mark>` around what fits. */
export function readPassage(html: string): PassagePart[] {
  return html
    .split(/<mark>(.*?)<\/mark>/s)
    .flatMap((text, index) => (index % 2 === 0 ? [{ text: decode(text), marked: false }] : markWord(decode(text))))
    .filter(({ text }) => text !== '')
}

/** Pagefind marks up to the next space; what ends a sentence belongs to no word. */
function markWord(text: string): PassagePart[] {
  const end = /[.,;:!?]+$/.exec(text)?.[0] ?? ''
  return [
    { text: text.slice(0, text.length - end.length), marked: true },
    { text: end, marked: false },
  ]
}

/** A passage that begins with the heading above it would say the heading twice. */
export function withoutHeading(passage: readonly PassagePart[], heading: string): PassagePart[] {
  const text = passage.map((part) => part.text).join('')
  if (heading === '' || !text.startsWith(heading)) return [...passage]
  let left = heading.length + (/^[.\s]*/.exec(text.slice(heading.length))?.[0].length ?? 0)
  return passage.flatMap(({ text, marked }) => {
    const kept = text.slice(left)
    left = Math.max(0, left - text.length)
    return kept === '' ? [] : [{ text: kept, marked }]
  })
}

const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', '#39': "'" }

function decode(text: string): string {
  return text.replace(/&(lt|gt|amp|quot|#39);/g, (whole, name: string) => entities[name] ?? whole)
}
