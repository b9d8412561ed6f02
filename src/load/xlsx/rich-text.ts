import type { XmlHandlers } from './walk-xml.ts'

/**
 * Collects the text of each element of a name, its runs joined: a shared string, or a text that stands in its cell.
 * How a word is pronounced (`rPh`) is no part of the text.
 */
export function textCollector(element: string, take: (text: string) => void): Required<XmlHandlers> {
  let text = ''
  let inText = false
  let inPhonetic = false
  return {
    open(name) {
      if (name === element) text = ''
      else if (name === 'rPh') inPhonetic = true
      else if (name === 't') inText = !inPhonetic
    },
    text(piece) {
      if (inText) text += piece
    },
    close(name) {
      if (name === 't') inText = false
      else if (name === 'rPh') inPhonetic = false
      else if (name === element) take(unescaped(text))
    },
  }
}

/** Characters that XML cannot hold are written by number: `_x000D_`. Source: ECMA-376 part 1, 22.9.2.19. */
export function unescaped(text: string): string {
  if (!text.includes('_x')) return text
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
}
