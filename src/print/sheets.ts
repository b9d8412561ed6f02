import { address } from '../site/address.ts'
import { pathIn } from '../site/site-map.ts'
import { factsOf, type PrintInput, partsHtml } from './machine-book.ts'
import { sheetHtml } from './sheet.ts'

export type SheetKind = 'lockout' | 'lesson' | 'parts' | 'alarms'

export interface Sheet {
  /** Name of its file, without an ending. */
  name: string
  /** The document. A sheet that takes more than two pages is tried once more with less room between its lines. */
  html(isDense: boolean): string
}

/** The sheets of a kind: one for each lockout, lesson or alarm, one for all parts. */
export function sheetsOf(input: PrintInput, kind: SheetKind): Sheet[] {
  const { machine, language, labels, words, paper, styles } = input
  const facts = factsOf(input)
  const lists = new Set([labels.usedAlsoOn])
  return pagesOf(input, kind).map(({ name, at, lookUp }) => {
    const path = pathIn(machine, language, at)
    const html = kind === 'parts' ? partsHtml(input, true) : input.read(path)
    return { name, html: (isDense) => sheetHtml({ path, html, lookUp, facts, names: labels, words, paper, styles, lists, isDense }) }
  })
}

interface SheetPage {
  name: string
  /** Address of its page, the same in every language. */
  at: string
  lookUp: string | undefined
}

function pagesOf({ machine, graph }: PrintInput, kind: SheetKind): SheetPage[] {
  if (kind === 'parts') return [{ name: 'parts', at: address.parts, lookUp: undefined }]
  if (kind === 'alarms') return machine.alarms.map(({ number }) => pageOf(address.alarm(number.value), number.value))
  if (kind === 'lockout') return graph.pagesIn('lockout').map((page) => pageOf(address.page(page.id), page.frontmatter.number))
  return graph.pagesIn('lessons').map((page) => pageOf(address.page(page.id), undefined))
}

/** A sheet is called as its page: `lockout-lo-1`. */
function pageOf(at: string, lookUp: string | undefined): SheetPage {
  return { name: at.replace(/\.html$/, '').replaceAll('/', '-'), at, lookUp }
}
