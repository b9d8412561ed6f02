import { element } from '../dom.ts'

export interface BriefMessages {
  strip: HTMLElement
  /** The messages that hold from now on. */
  hold(messages: readonly HTMLElement[]): void
  /** Shows the word and the hazard of each message that is not wholly seen above `bottomPx`. Gives the height that they take, in px. */
  show(bottomPx: number): number
  /** The height that they would take if none of them could be seen, in px. */
  fullPx(): number
  hide(): void
}

/**
 * Says in a line each, at the top of the window, the messages of the step in focus that are scrolled out of it: a message
 * and a step that are higher than the screen together still stand on it together. It repeats what the page says, so it
 * is for eyes alone.
 */
export function briefMessages(): BriefMessages {
  const strip = element('div', { className: 'brief-messages' })
  strip.setAttribute('aria-hidden', 'true')
  strip.hidden = true
  let rows: { row: HTMLElement; message: HTMLElement }[] = []
  const show = (bottomPx: number): number => {
    strip.hidden = false
    for (const { row } of rows) row.hidden = true
    // What the lines cover is not seen either, so each line can call for another one.
    for (let more = true; more; ) {
      const topPx = strip.offsetHeight
      const covered = rows.filter(({ row, message }) => row.hidden && !isBetween(message, topPx, bottomPx))
      for (const { row } of covered) row.hidden = false
      more = covered.length > 0
    }
    strip.hidden = rows.every(({ row }) => row.hidden)
    return strip.offsetHeight
  }
  return {
    strip,
    hold(messages) {
      rows = messages.map((message) => ({ message, row: briefOf(message) }))
      strip.textContent = ''
      strip.append(...rows.map(({ row }) => row))
    },
    show,
    fullPx: () => show(-1),
    hide: () => {
      strip.hidden = true
    },
  }
}

function isBetween(message: HTMLElement, topPx: number, bottomPx: number): boolean {
  const { top, bottom } = message.getBoundingClientRect()
  return top >= topPx - 1 && bottom <= bottomPx + 1
}

function briefOf(message: HTMLElement): HTMLElement {
  const word = message.querySelector('.safety-word')?.cloneNode(true)
  const hazard = message.querySelector('.safety-hazard') ?? message.querySelector('.safety-text > *') ?? message.querySelector('.safety-text')
  const form = [...message.classList].filter((name) => /^safety-(z535|iso|danger|warning|caution|notice)/.test(name)).join(' ')
  const text = element('span', {
    text: hazard?.textContent?.trim().replace(/\s+/g, ' ') ?? '',
    lang: message.closest('[lang]')?.getAttribute('lang') ?? '',
  })
  return element('div', { className: `safety safety-brief ${form}` }, ...(word ? [word] : []), text)
}
