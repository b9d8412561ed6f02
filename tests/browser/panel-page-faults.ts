import type { Page } from 'playwright-core'

export interface PanelLimits {
  targetPx: number
  /** Least size of letters of the text font, in px. */
  leastTextPx: number
  /** Capitals of the label font are so much larger than those of the text font. */
  labelShare: number
}

/**
 * What is wrong with an opened page on a panel, a line each: wider than the screen, text cut off or too small, a target too small,
 * less than 60 % of the height left for what the page says. Not measured as targets: links in running text, as in WCAG 2.5.8, and what
 * stands on a drawing or plan where its place is (there is a list, and the drawing is enlarged by keys).
 */
export async function panelPageFaults(page: Page, limits: PanelLimits): Promise<string[]> {
  return page.evaluate(({ targetPx, leastTextPx, labelShare }) => {
    const faults: string[] = []
    const name = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} "${(element.textContent ?? '').trim().slice(0, 40)}"`
    const isSeen = (element: Element) => {
      const { width, height } = element.getBoundingClientRect()
      return width > 1 && height > 1 && getComputedStyle(element).visibility === 'visible' && !element.closest('.hidden, .skip, .plate-key')
    }
    if (document.documentElement.scrollWidth > innerWidth) faults.push(`wide: ${document.documentElement.scrollWidth} px`)

    const isInText = (element: Element) => {
      const parent = element.parentElement
      return (
        parent !== null &&
        getComputedStyle(element).display.startsWith('inline') &&
        !/flex|grid/.test(getComputedStyle(parent).display) &&
        (parent.textContent ?? '').trim().length > (element.textContent ?? '').trim().length
      )
    }
    for (const element of document.querySelectorAll('a[href], button, input:not([type=hidden]), select, summary, textarea')) {
      if (element.closest('svg')) continue
      const target = element.matches('input')
        ? (element.closest('label.route-tick, label.point-tick, label.quiz-choice, label.plan-choice, label.plan-tick, label.practical-item') ??
          element)
        : element
      if (!isSeen(target) || isInText(element)) continue
      const { width, height } = target.getBoundingClientRect()
      if (Math.min(width, height) < targetPx - 0.5) faults.push(`small target: ${width.toFixed(0)} × ${height.toFixed(0)} ${name(target)}`)
    }

    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const tooSmall = new Set<string>()
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const parent = node.parentElement
      if (!parent || !node.textContent?.trim() || parent.closest('svg, script, option') || !isSeen(parent)) continue
      const style = getComputedStyle(parent)
      const px = Number.parseFloat(style.fontSize) * (style.fontFamily.includes('Label') ? labelShare : 1)
      if (px < leastTextPx - 0.05) tooSmall.add(`small text: ${px.toFixed(1)} px ${name(parent)}`)
    }
    faults.push(...tooSmall)

    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      if (!isSeen(element) || element.closest('svg, .table-scroll, .sheet-window')) continue
      const { overflowX, overflowY } = getComputedStyle(element)
      if (overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1) faults.push(`cut off: ${name(element)}`)
      else if (
        overflowX === 'visible' &&
        element.matches('a, button, .rail a, .plate-value, p, h1, h2, h3, dd, span, b') &&
        element.getBoundingClientRect().right > innerWidth + 1
      )
        faults.push(`beyond the edge: ${name(element)}`)
      if (overflowY === 'hidden' && element.scrollHeight > element.clientHeight + 2) faults.push(`cut off below: ${name(element)}`)
      if (
        element.matches('button, .rail a, .act, .row, .question, .ways a, .plate') &&
        (element.scrollWidth > element.clientWidth + 2 || element.scrollHeight > element.clientHeight + 2)
      )
        faults.push(`out of its frame: ${name(element)}`)
    }

    const kept =
      innerHeight -
      (document.querySelector('.head')?.getBoundingClientRect().height ?? 0) -
      (document.querySelector('.rail')?.getBoundingClientRect().height ?? 0)
    if (kept < 0.6 * innerHeight) faults.push(`nameplate and rail leave ${((kept / innerHeight) * 100).toFixed(0)} % of the height`)
    return faults
  }, limits)
}
