import { attribute, classesOf, detach, elementsIn, firstElement, type HtmlElement, hasClass, isInside, setAttribute, textOf } from './html-tree.ts'

const tags = new Set(['script', 'template', 'link', 'style', 'button', 'form', 'nav', 'dialog', 'select'])

/** What a reader touches, or what a script fills. On paper it would be empty or say nothing. */
const classes = new Set([
  'hidden',
  'skip',
  'print',
  'filter',
  'sheet-tools',
  'search-form',
  'working-toggle',
  'meter-live',
  'meter-record',
  'meter-link',
  'quiz-live',
  'inspection',
  'decision',
  'record-form',
  'lesson-record',
  'said',
  'to-records',
  'records',
  'path-who',
  'path-next',
  'board-when',
  'board-count',
  'set-up-now',
  // The plan is printed once, as a drawing.
  'plan',
  'nearby',
  // What an assembly is told of stands in its own chapter, and not again at each of its devices.
  'about-device',
])

/** Boxes to tick with a pen. */
const ticked = ['route-tick', 'point-tick', 'practical-item']

/**
 * Takes out of a part what is there for a screen alone, and opens what is folded. `lists`: headings of lists of links that an
 * index takes the place of.
 */
export function leaveOutScreenOnly(part: HtmlElement, lists: ReadonlySet<string> = new Set()): void {
  for (const element of elementsIn(part)) {
    if (element !== part && isScreenOnly(element)) detach(element)
    else if (element.tagName === 'details') setAttribute(element, 'open', '')
    // Nobody scrolls to a picture on paper.
    else if (element.tagName === 'img') element.attrs = element.attrs.filter(({ name }) => name !== 'loading')
  }
  for (const element of elementsIn(part)) if (leadsOnAlone(element, lists)) detach(element)
}

function isScreenOnly(element: HtmlElement): boolean {
  if (tags.has(element.tagName) || attribute(element, 'hidden') !== undefined) return true
  if (attribute(element, 'data-fault-table') !== undefined || attribute(element, 'href') === '#meter') return true
  if (hasClass(element, 'path')) return isInside(element, (it) => hasClass(it, 'meter'))
  if (element.tagName === 'input') return !isInside(element, (it) => ticked.some((name) => hasClass(it, name)))
  if (element.tagName === 'figcaption' && element.parentNode && 'tagName' in element.parentNode) return hasClass(element.parentNode, 'sheet')
  return classesOf(element).some((name) => classes.has(name))
}

/** A heading over links that were taken out, or over those that are found in the index. */
function leadsOnAlone(element: HtmlElement, lists: ReadonlySet<string>): boolean {
  if (element.tagName !== 'section' || !hasClass(element, 'links')) return false
  const heading = firstElement(element, ({ tagName }) => tagName === 'h2')
  if (heading && lists.has(textOf(heading))) return true
  return ![...elementsIn(element)].some(({ tagName }) => tagName === 'a' || tagName === 'li' || tagName === 'p')
}
