import { append, attribute, detach, element, elementsIn, type HtmlElement, moveChildren } from './html-tree.ts'
import type { PrintWords } from './words/print-words.ts'

/**
 * Says composed steps that follow one another and do the same to several points as one step, with a box for each point. Place
 * and lock of a point stand on the board of the same sheet; the order stays. Steps of the author are left as they are.
 */
export function mergeSteps(main: HtmlElement, words: Pick<PrintWords, 'setEach' | 'lockEach'>): void {
  let run: HtmlElement[] = []
  const end = () => {
    if (run.length > 1) merge(run, words)
    run = []
  }
  for (const step of [...elementsIn(main)].filter((it) => attribute(it, 'class') === 'route-step')) {
    const [last] = run
    if (last && !(isAlike(last, step) && last.parentNode === step.parentNode)) end()
    if (attribute(step, 'data-act') !== undefined) run.push(step)
  }
  end()
}

const isAlike = (a: HtmlElement, b: HtmlElement) =>
  attribute(a, 'data-act') === attribute(b, 'data-act') && attribute(a, 'data-position') === attribute(b, 'data-position')

function merge(steps: readonly HtmlElement[], words: Pick<PrintWords, 'setEach' | 'lockEach'>): void {
  const [first, ...others] = steps
  if (!first) return
  const said = attribute(first, 'data-act') === 'lock' ? words.lockEach : words.setEach
  const text = element('p', {})
  for (const part of said.replace('{position}', attribute(first, 'data-position') ?? '').split(/(\{points\})/)) {
    if (part !== '{points}') append(text, part)
    else
      for (const [index, step] of steps.entries()) {
        if (index > 0) append(text, ' ')
        append(text, pointOf(step))
      }
  }
  for (const step of others) detach(step)
  moveChildren(first, element('li', {}))
  append(first, element('div', { class: 'route-text' }, text))
}

function pointOf(step: HtmlElement): HtmlElement {
  const [at = '', device = ''] = [attribute(step, 'data-at'), attribute(step, 'data-device')]
  return element('span', { class: 'each-point' }, element('b', {}, at), ' ', element('span', { class: 'label' }, device))
}
