import { element } from '../dom.ts'

export interface Cell {
  text?: string | undefined
  /** Smaller, below the text. */
  note?: string | undefined
  lang?: string | undefined
  className?: string
}

/** A table with a heading for each column; the first cell of a row is the heading of the row. */
export function tableNode({
  caption,
  headings,
  rows,
}: {
  caption?: string
  headings: readonly string[]
  rows: readonly (readonly Cell[])[]
}): HTMLElement {
  const head = element('thead', {}, element('tr', {}, ...headings.map((text) => scoped('col', { text }))))
  const body = element('tbody', {}, ...rows.map((row) => element('tr', {}, ...row.map((cell, index) => cellNode(cell, index)))))
  const table = element('table', {}, ...(caption === undefined ? [] : [element('caption', { text: caption })]), head, body)
  return element('div', { className: 'table-scroll' }, table)
}

function cellNode({ text, note, lang, className }: Cell, index: number): HTMLElement {
  const options = { ...(className ? { className } : {}) }
  const children = [
    ...(text === undefined ? [] : [element('span', { text, ...(lang ? { lang } : {}) })]),
    ...(note ? [element('small', { text: note })] : []),
  ]
  return index === 0 ? scoped('row', options, ...children) : element('td', options, ...children)
}

function scoped(scope: 'col' | 'row', options: { text?: string; className?: string }, ...children: readonly Node[]): HTMLElement {
  const heading = element('th', options, ...children)
  heading.setAttribute('scope', scope)
  return heading
}
