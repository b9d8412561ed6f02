import { findWords } from './find-words.ts'

interface Marked {
  words: readonly string[]
  /** The mark of the block in which the words stand. */
  after: Element
  /** What was found, shown when the mark in the margin is touched. */
  found: HTMLElement
  label: string
}

/** Puts a mark in the margin beside words, and hides what was found until it is touched. Words that the page does not show leave it open. */
export function markWords({ words, after, found, label }: Marked): void {
  const range = rangeIn(blockAfter(after), words)
  if (!range) return
  found.hidden = true
  const mark = document.createElement('button')
  mark.type = 'button'
  mark.className = 'fettle-margin'
  mark.setAttribute('aria-expanded', 'false')
  mark.setAttribute('aria-label', label)
  mark.addEventListener('click', () => {
    found.hidden = !found.hidden
    mark.setAttribute('aria-expanded', String(!found.hidden))
    place()
  })
  const place = () => {
    const { top, left, height } = range.getBoundingClientRect()
    const page = range.commonAncestorContainer.parentElement?.closest('main')?.getBoundingClientRect().left ?? left
    mark.style.cssText = `top:${top + scrollY}px;left:${Math.max(0, Math.min(left, page + 24) - 22) + scrollX}px;height:${height}px`
  }
  document.body.append(mark)
  place()
  addEventListener('resize', place)
  // Another mark that is opened moves the words.
  document.addEventListener('click', () => requestAnimationFrame(place))
  if (typeof Highlight === 'function') highlighted().add(range)
}

function highlighted(): Highlight {
  const known = CSS.highlights.get('fettle-wording') ?? new Highlight()
  CSS.highlights.set('fettle-wording', known)
  return known
}

/** What follows a mark, up to the next one. */
function blockAfter(mark: Element): Element[] {
  const block: Element[] = []
  for (let next = mark.nextElementSibling; next && !next.matches('[data-source-file]'); next = next.nextElementSibling)
    if (!next.matches('.fettle-found')) block.push(next)
  return block
}

function rangeIn(block: readonly Element[], words: readonly string[]): Range | undefined {
  const nodes: { node: Text; at: number }[] = []
  let text = ''
  for (const element of block) {
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!(node instanceof Text)) continue
      nodes.push({ node, at: text.length })
      text += node.data
    }
  }
  const found = findWords(text, words)
  const lastOf = (isBefore: (at: number) => boolean) => nodes.filter(({ at }) => isBefore(at)).pop()
  const [from, to] = found ? [lastOf((at) => at <= found.start), lastOf((at) => at < found.end)] : []
  if (!found || !from || !to) return undefined
  const range = document.createRange()
  range.setStart(from.node, found.start - from.at)
  range.setEnd(to.node, found.end - to.at)
  return range
}
