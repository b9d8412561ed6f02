import { numberFigures } from './figures.ts'
import type { ContentsEntry } from './front-matter.ts'
import { joinNameAndHeading, lowerHeadings, numberHeadings } from './headings.ts'
import { append, element, type HtmlElement, moveChildren, writeElement } from './html-tree.ts'
import type { DrawingPaper, PageStyle } from './page-boxes.ts'
import { type TakenPage, takePage } from './taken-page.ts'
import type { PrintWords } from './words/print-words.ts'

export interface ChapterInput {
  /** Heading of a chapter of several pages; a chapter of one page has the heading of the page. */
  title?: string
  /** Paths from the root of the site with what the site has written there. */
  pages: readonly { path: string; html: string }[]
  /** Whether the contents name its pages one by one. */
  listed?: boolean
  /** `sheets`: each page lies on a sheet of its own, turned. `narrow` and `own`: each page begins a new sheet. `together`: they follow one another. */
  layout: 'sheets' | 'narrow' | 'own' | 'together'
}

export interface Chapter extends ChapterInput {
  /** Id of the chapter, and CSS name of its pages. */
  key: string
  number: number
  said: string
  taken: readonly TakenPage[]
}

/** Throws where a text is no page of the site. Chapters without pages are left out. */
export function takeChapters(chapters: readonly ChapterInput[], lists: ReadonlySet<string>): Chapter[] {
  let count = 0
  return chapters
    .filter(({ pages }) => pages.length > 0)
    .map((chapter, index) => {
      const taken = chapter.pages.map(({ path, html }) => takePage(path, html, `p${++count}`, lists))
      return { ...chapter, key: `c${index + 1}`, number: index + 1, said: chapter.title ?? taken[0]?.title ?? '', taken }
    })
}

/** The chapters one after the other, with their headings, figures and tables numbered. Empties the pages. */
export function chaptersHtml(chapters: readonly Chapter[], words: PrintWords): string {
  let counts = { figures: 0, tables: 0 }
  const captions = {
    figure: (number: number) => words.figure.replace('{number}', String(number)),
    table: (number: number) => words.table.replace('{number}', String(number)),
  }
  const sections = chapters.map((chapter) => {
    const { key, number, title, taken, layout } = chapter
    const section = element('section', { class: `chapter chapter-${layout}`, id: key, style: `page:${key}` })
    if (title !== undefined) append(section, element('h1', { class: 'chapter-title' }, `${number} ${title}`))
    for (const [index, page] of taken.entries()) {
      joinNameAndHeading(page.main)
      if (title !== undefined) lowerHeadings(page.main, 1)
      counts = numberFigures(page.main, counts, captions)
      numberHeadings(page.main, title === undefined ? String(number) : `${number}.${index + 1}`, title === undefined)
      append(section, articleOf(page))
    }
    return writeElement(section)
  })
  return sections.join('\n')
}

function articleOf({ kind, key, main }: TakenPage): HtmlElement {
  const article = element('article', { class: `kind-${kind}`, id: key })
  moveChildren(main, article)
  return article
}

export function contentsOf(chapters: readonly Chapter[]): ContentsEntry[] {
  return chapters.flatMap(({ key, number, said, title, taken, listed = true }): ContentsEntry[] => [
    { number: String(number), title: said, id: key, level: 1 },
    ...(title === undefined || !listed
      ? []
      : taken.map((page, index): ContentsEntry => ({ number: `${number}.${index + 1}`, title: page.title, id: page.key, level: 2 }))),
  ])
}

/** A kind of pages for each chapter, with its heading above the text. */
export function pageStylesOf(chapters: readonly Chapter[], drawings: DrawingPaper): PageStyle[] {
  return chapters.map(({ key, number, said, layout }) => ({
    name: key,
    head: `${number} ${said}`,
    landscape: layout === 'sheets',
    folded: layout === 'sheets' && drawings === 'folded',
    narrow: layout === 'narrow',
  }))
}
