import { declarationHtml, effectiveHtml, type IndexEntry, indexHtml } from './back-matter.ts'
import type { BookFacts, FactNames } from './book-facts.ts'
import { type ChapterInput, chaptersHtml, contentsOf, pageStylesOf, takeChapters } from './chapters.ts'
import { documentHtml } from './document.ts'
import { type ContentsEntry, contentsHtml, coverHtml } from './front-matter.ts'
import { type Mention, type RowTarget, rewriteLinks, targetId } from './links.ts'
import { type DrawingPaper, drawingHeightMm, type Paper, pageRules } from './page-boxes.ts'
import { type PageNumbers, writePageNumbers } from './page-numbers.ts'
import type { PrintWords } from './words/print-words.ts'

export const indexGroups = ['tags', 'partNumbers', 'alarmNumbers'] as const

const backMatter = ['declaration', 'effective', 'index'] as const

/** A thing with an entry in the index. */
export interface Indexed {
  group: (typeof indexGroups)[number]
  name: string
  said: string
}

export interface BookInput {
  chapters: readonly ChapterInput[]
  /** Pages of the site that are rows of a table in the book. */
  rows: ReadonlyMap<string, RowTarget>
  /** Page of the site -> the thing that it is about, in the order of the index. */
  things: ReadonlyMap<string, Indexed>
  facts: BookFacts
  names: FactNames
  words: PrintWords
  paper: Paper
  drawings: DrawingPaper
  /** Headings of lists of links that the index takes the place of. */
  lists: ReadonlySet<string>
  /** Styles besides those of the site. */
  styles: string
  /** Whether the book has index, list of effective pages and declaration. */
  whole: boolean
}

export interface Book {
  /** Every id whose page is printed somewhere. */
  ids: readonly string[]
  /** The document with the numbers that are known: none before the first printing. `total`: pages of all. */
  html(pages: PageNumbers, total: number): string
  /** What the document prints as numbers of pages: id -> where. */
  entries: readonly { id: string; said: string }[]
}

/** Puts pages of the site together as one document for paper. Throws where a text is no page of the site. */
export function composeBook(input: BookInput): Book {
  const { words, facts, names, whole } = input
  const chapters = takeChapters(input.chapters, input.lists)
  const taken = chapters.flatMap((chapter) => chapter.taken)
  const linked = {
    pages: new Map(taken.map((page) => [page.path, page])),
    rows: input.rows,
    indexed: new Set(input.things.keys()),
    saysPages: true,
  }
  const mentions = taken.flatMap((page) => rewriteLinks(page, linked).map((mention) => ({ ...mention, on: page.key })))
  const body = chaptersHtml(chapters, words)
  const back: ContentsEntry[] = whole ? backMatter.map((id) => ({ number: '', title: words[id], id, level: 1 })) : []
  const contents = [...contentsOf(chapters), ...back]
  const groups = indexGroups.map((group) => ({
    title: words[group],
    id: `index-${group}`,
    entries: indexEntries(group, input.things, mentions, (path) => targetId(path, undefined, linked)),
  }))
  const parts = [
    { title: words.front, id: 'contents' },
    ...contents.filter(({ level }) => level === 1).map(({ number, title, id }) => ({ title: `${number} ${title}`.trim(), id })),
  ]
  const ids = [
    ...new Set([
      'contents',
      ...contents.map(({ id }) => id),
      ...linkedIds(body),
      ...groups.flatMap(({ entries }) => entries.map(({ id }) => id)),
      ...mentions.map(({ id }) => id),
    ]),
  ]
  const frontHead = [{ name: 'cover' }, { name: 'front', head: words.contents }, { name: 'back', head: '' }]
  const pages = pageRules([...frontHead, ...pageStylesOf(chapters, input.drawings)], facts, input.paper, { pageOf: words.pageOf, names })
  const styles = `${input.styles}\n${pages}\n.chapter-sheets{--drawing-height:${drawingHeightMm(input.paper, input.drawings)}mm}`
  const front = coverHtml(facts, names, words.language) + contentsHtml(words.contents, contents)
  return {
    ids,
    entries: contents.map(({ id, title }) => ({ id, said: title })),
    html(pages, total) {
      const end = whole
        ? `<div class="back">${declarationHtml(words)}${effectiveHtml(parts, pages, total, facts, words, names)}${indexHtml(groups, pages, words)}</div>`
        : ''
      const title = `${facts.name} ${facts.model}, ${names.serial} ${facts.serial}, ${facts.document} ${names.revision} ${facts.revision}`
      const text = documentHtml({ language: facts.language, title, styles, body: front + body + end, ids })
      return writePageNumbers(sayPages(text, words), pages)
    },
  }
}

/** Cross references say `(page 87)`. */
function sayPages(text: string, words: PrintWords): string {
  return text.replace(
    /<span class="to-page">(.*?)<\/span>/g,
    (_, token: string) => `<span class="to-page"> ${words.toPage.replace('{page}', () => token)}</span>`,
  )
}

function indexEntries(
  group: Indexed['group'],
  things: BookInput['things'],
  mentions: readonly (Mention & { on: string })[],
  idOf: (path: string) => string | undefined,
): IndexEntry[] {
  const byThing = Map.groupBy(mentions, ({ of }) => of)
  return [...things].flatMap(([path, { group: own, name, said }]) => {
    const id = own === group ? idOf(path) : undefined
    if (id === undefined) return []
    const found = byThing.get(path) ?? []
    return [{ name, said, id, mentions: found.map((it) => it.id), guess: new Set(found.map(({ on }) => on)).size }]
  })
}

/** The ids that links in a text lead to. */
function linkedIds(html: string): string[] {
  return [...html.matchAll(/<a [^>]*href="#([A-Za-z0-9_-]+)"/g)].flatMap(([, id]) => id ?? [])
}
