import {
  append,
  attribute,
  childElements,
  classesOf,
  detach,
  element,
  elementsIn,
  firstElement,
  firstWithClass,
  type HtmlElement,
  hasClass,
  moveChildren,
  prepend,
  setAttribute,
  textOf,
} from './html-tree.ts'
import { mergeSteps } from './merge-steps.ts'
import type { PrintWords } from './words/print-words.ts'

/**
 * Brings a lockout onto one or two sheets for a door without a word of its sequence lost. The board says what there is and
 * where it is cut off; how it is released and proved stands once, in the steps. Messages of one signal word stand under one word.
 */
export function tightenLockout(main: HtmlElement, words: PrintWords): void {
  tightenBoard(main)
  for (const it of elementsIn(main)) if (hasClass(it, 'route-tick')) detach(it)
  mergeSteps(main, words)
  for (const it of elementsIn(main)) if (hasClass(it, 'lockout-before') || hasClass(it, 'lockout-phase')) groupMessages(it)
}

function tightenBoard(main: HtmlElement): void {
  const shown = new Set<string>()
  for (const source of elementsIn(main)) {
    if (!hasClass(source, 'source')) continue
    const rest = firstWithClass(source, 'source-rest')
    if (rest) {
      keepStored(source, rest)
      detach(rest)
    }
    for (const point of elementsIn(source)) {
      if (!hasClass(point, 'point')) continue
      tickFirst(point)
      const number = firstWithClass(point, 'point-number')
      if (number && shown.has(textOf(number))) sayAgain(point)
      else if (number) shown.add(textOf(number))
    }
  }
}

/** Moves the stored energy of a source behind its magnitude. */
function keepStored(source: HtmlElement, rest: HtmlElement): void {
  const stored = firstWithClass(rest, 'stored')
  const name = stored && firstElement(stored, ({ tagName }) => tagName === 'dt')
  const value = stored && firstElement(stored, ({ tagName }) => tagName === 'b')
  const head = firstWithClass(source, 'source-head')
  const said = head && firstElement(head, ({ tagName }) => tagName === 'p')
  if (!name || !value || !said) return
  detach(value)
  append(said, element('span', { class: 'stored-said' }, ` ${textOf(name)}: `, value, textOf(value).endsWith('.') ? '' : '.'))
}

/** The box to tick stands before the number, as that of a step does, so that the words have the whole width below it. */
function tickFirst(point: HtmlElement): void {
  const tick = firstWithClass(point, 'point-tick')
  if (!tick) return
  detach(tick)
  prepend(point, tick)
}

/** A point that cuts off a second source is described and ticked once: here stand its number, device and position. */
function sayAgain(point: HtmlElement): void {
  const what = firstWithClass(point, 'point-what')
  const label = what && firstWithClass(what, 'label')
  const position = what && firstWithClass(what, 'position')
  const tick = firstWithClass(point, 'point-tick')
  if (!what || !label || !position) return
  const [, second] = childElements(what)
  const turnTo = second
    ? (second.childNodes.find((it) => 'value' in it && it.value.trim() !== '') as { value: string } | undefined)?.value.trim()
    : undefined
  for (const child of childElements(what)) detach(child)
  append(what, element('p', {}, label, ` ${turnTo ?? ''} `, position))
  if (tick) detach(tick)
  setAttribute(point, 'class', 'point again')
}

/** Puts messages that follow one another under one signal word, where they have the same. */
function groupMessages(part: HtmlElement): void {
  for (const it of elementsIn(part)) unwrap(it)
  let last: HtmlElement | undefined
  for (const it of messagesAndWords(part)) {
    if (!hasClass(it, 'safety') || !firstWithClass(it, 'safety-word')) last = undefined
    else if (last && attribute(last, 'class')?.replace(' safety-several', '') === attribute(it, 'class') && last.parentNode === it.parentNode) {
      leadWithWord(last)
      const word = firstWithClass(it, 'safety-word')
      if (word) detach(word)
      moveChildren(it, last)
      detach(it)
    } else last = it
  }
}

/** Messages that run over to the next column have their word there too: it is laid out as the head of a table. */
function leadWithWord(message: HtmlElement): void {
  if (hasClass(message, 'safety-several')) return
  const word = firstWithClass(message, 'safety-word')
  if (!word) return
  setAttribute(message, 'class', `${attribute(message, 'class')} safety-several`)
  detach(word)
  prepend(message, element('div', { class: 'safety-lead' }, word))
}

/** An included message lies in a box of its own; without it the messages are neighbours. */
function unwrap(message: HtmlElement): void {
  const box = message.parentNode
  if (!hasClass(message, 'safety') || !box || !('tagName' in box) || !classesOf(box).includes('prose') || childElements(box).length > 1) return
  const outer = box.parentNode
  if (
    !outer ||
    !('childNodes' in outer) ||
    !('tagName' in outer) ||
    classesOf(box).includes('lockout-before') ||
    classesOf(box).includes('lockout-phase')
  )
    return
  outer.childNodes.splice(outer.childNodes.indexOf(box), 1, message)
  message.parentNode = outer
}

/** Messages and what stands between them, without what stands inside of either. */
function* messagesAndWords(part: HtmlElement): Generator<HtmlElement> {
  for (const child of childElements(part)) {
    if (hasClass(child, 'safety') || !firstWithClass(child, 'safety')) yield child
    else yield* messagesAndWords(child)
  }
}
