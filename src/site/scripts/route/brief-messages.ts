import { element } from '../dom.ts'

export interface BriefMessages {
  strip: HTMLElement
  /** The messages that hold from now on, in the order of the page. */
  hold(messages: readonly HTMLElement[]): void
  /** Shows the word and the hazard of each message that is not wholly seen above `bottomPx`. Gives the height that they take, in px. */
  show(bottomPx: number): number
  /** The height that the first `count` of them take in brief, in px. */
  heightPx(count: number): number
  hide(): void
}

/**
 * Says in brief, at the top of the window, the messages of the step in focus that are scrolled out of it: a message
 * and a step that are higher than the screen together still stand on it together. It repeats what the page says, so it
 * is for eyes alone.
 */
export function briefMessages(): BriefMessages {
  const strip = element('div', { className: 'brief-messages' })
  strip.setAttribute('aria-hidden', 'true')
  strip.hidden = true
  let rows: { hazard: HTMLElement; message: HTMLElement }[] = []
  const heightPx = (count: number): number => {
    for (const [index, { hazard }] of rows.entries()) hazard.hidden = index >= count
    return resize()
  }
  const resize = (): number => {
    for (const group of strip.querySelectorAll<HTMLElement>('.safety')) group.hidden = !group.querySelector('[data-hazard]:not([hidden])')
    strip.hidden = rows.every(({ hazard }) => hazard.hidden)
    return strip.offsetHeight
  }
  return {
    strip,
    hold(messages) {
      rows = messages.map((message) => ({ message, hazard: hazardOf(message) }))
      strip.textContent = ''
      const words = new Set(messages.map(wordOf))
      strip.append(...[...words].map((word) => groupOf(rows.filter(({ message }) => wordOf(message) === word))))
    },
    show(bottomPx) {
      let height = heightPx(0)
      // What the lines cover is not seen either, so each line can call for another one.
      for (let more = true; more; ) {
        const covered = rows.filter(({ hazard, message }) => hazard.hidden && !isBetween(message, height, bottomPx))
        for (const { hazard } of covered) hazard.hidden = false
        if (covered.length > 0) height = resize()
        more = covered.length > 0
      }
      return height
    },
    heightPx,
    hide: () => {
      strip.hidden = true
    },
  }
}

const wordOf = (message: HTMLElement) => message.querySelector('.safety-word')?.textContent ?? ''

function isBetween(message: HTMLElement, topPx: number, bottomPx: number): boolean {
  const { top, bottom } = message.getBoundingClientRect()
  return top >= topPx - 1 && bottom <= bottomPx + 1
}

function hazardOf(message: HTMLElement): HTMLElement {
  const said = message.querySelector('.safety-hazard') ?? message.querySelector('.safety-text > *') ?? message.querySelector('.safety-text')
  const lang = (said ?? message).closest('[lang]')?.getAttribute('lang') ?? ''
  const hazard = element('span', { text: said?.textContent?.trim().replace(/\s+/g, ' ') ?? '', lang })
  hazard.dataset.hazard = ''
  return hazard
}

/** Messages of one word beside that word. */
function groupOf(rows: readonly { hazard: HTMLElement; message: HTMLElement }[]): HTMLElement {
  const message = rows[0]?.message
  const word = message?.querySelector('.safety-word')?.cloneNode(true)
  const form = [...(message?.classList ?? [])].filter((name) => /^safety-(z535|iso|danger|warning|caution|notice)/.test(name)).join(' ')
  return element('div', { className: `safety safety-brief ${form}` }, ...(word ? [word] : []), element('p', {}, ...rows.map(({ hazard }) => hazard)))
}
