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

/** A passage that begins with what stands above it would say it twice: the name and title of its page, its heading. */
export function withoutHeadings(passage: readonly PassagePart[], headings: readonly string[]): PassagePart[] {
  const text = passage.map((part) => part.text).join('')
  let left = 0
  for (const heading of headings) {
    if (heading === '' || !text.startsWith(heading, left)) continue
    left += heading.length
    left += /^[.\s]*/.exec(text.slice(left))?.[0].length ?? 0
  }
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
