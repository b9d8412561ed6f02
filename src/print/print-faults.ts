import { lostLinks } from './lost-links.ts'
import type { ReadBack } from './read-back.ts'

export interface PrintedDocument extends ReadBack {
  html: string
  lostPictures: readonly { file: string; article: string }[]
  /** Pages with a character that no font has. */
  missingGlyphs: readonly number[]
  /** Whether the letters have the size that the styles give them. */
  isInSize: boolean
}

/** What a PDF has lost of its document, each with its page, and what a reader with a screen reader would miss. */
export function printFaults(printed: PrintedDocument, expected: { ids: readonly string[]; language: string }): string[] {
  const { html, pages, linked } = printed
  const on = (page: number | undefined) => (page === undefined ? '' : `page ${page}: `)
  const placeless = new Set(expected.ids.filter((id) => !pages.has(id)))
  return [
    ...[...placeless].map((id) => `${on(pages.get(articleOf(id)))}the place \`${id}\` has no page`),
    ...lostLinks(html, linked, pages).flatMap(({ to, page }) => (placeless.has(to) ? [] : [`${on(page)}the link to \`${to}\` is not in the PDF`])),
    ...printed.lostPictures.map(({ file, article }) => `${on(pages.get(article))}the picture \`${file}\` could not be loaded`),
    ...printed.missingGlyphs.map((page) => `${on(page)}no font of this computer has one of its characters`),
    ...(printed.isInSize
      ? []
      : ['something is wider or higher than its page, so that every letter is printed smaller: look for a table of many columns or a long name']),
    ...(printed.title === '' ? ['the PDF has no title'] : []),
    ...(printed.language === expected.language ? [] : [`the PDF is in \`${printed.language}\`, not in \`${expected.language}\``]),
    ...(printed.isTagged ? [] : ['the PDF has no tags']),
    ...(printed.outline > 0 ? [] : ['the PDF has no outline']),
  ]
}

/** Ids begin with that of their article: `p12-hazards`. */
const articleOf = (id: string) => id.split('-')[0] ?? id
