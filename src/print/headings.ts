import { attribute, detach, element, elementsIn, firstElement, type HtmlElement, hasClass, prepend, rename } from './html-tree.ts'

/** What stands beside the heading of a page and belongs to it: a tag, a number. */
const nameClasses = ['label-large', 'alarm-number', 'part-number-large', 'plate-number']

/** Makes the name of the thing part of its heading, so that outline and contents have both. */
export function joinNameAndHeading(main: HtmlElement): void {
  const head = firstElement(main, ({ tagName }) => tagName === 'header')
  const heading = head && firstElement(head, ({ tagName }) => tagName === 'h1')
  const name = head && firstElement(head, (it) => nameClasses.some((known) => hasClass(it, known)))
  if (!heading || !name) return
  detach(name)
  rename(name, 'span')
  prepend(heading, ' ')
  prepend(heading, name)
}

const level = ({ tagName }: HtmlElement) => Number(/^h([1-6])$/.exec(tagName)?.[1] ?? 0)

/** Moves every heading down; the sixth level is the last. */
export function lowerHeadings(main: HtmlElement, by: number): void {
  for (const it of elementsIn(main)) if (level(it) > 0) rename(it, `h${Math.min(6, level(it) + by)}`)
}

/** Numbers the heading of a page, and where `deeper` the headings one level below it, in messages and boards none. */
export function numberHeadings(main: HtmlElement, number: string, deeper: boolean): void {
  const [top] = [...elementsIn(main)].filter((it) => level(it) > 0)
  if (!top) return
  prepend(top, numberLabel(number))
  if (!deeper) return
  const below = [...elementsIn(main)].filter((it) => level(it) === level(top) + 1 && attribute(it, 'class') === undefined)
  for (const [index, it] of below.entries()) prepend(it, numberLabel(`${number}.${index + 1}`))
}

const numberLabel = (number: string) => element('span', { class: 'heading-number' }, `${number} `)
