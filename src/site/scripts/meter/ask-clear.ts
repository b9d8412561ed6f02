import { required } from '../dom.ts'

/** Asks on the page before the readings are thrown away: a glove touches more than it means. */
export function startClear(root: HTMLElement, clear: () => void): void {
  const button = required<HTMLButtonElement>(root, '[data-meter-clear]')
  const ask = required<HTMLElement>(root, '[data-meter-ask]')
  const keep = required<HTMLButtonElement>(ask, '[data-ask-keep]')
  const show = (open: boolean) => {
    ask.hidden = !open
    button.setAttribute('aria-expanded', String(open))
  }
  const close = () => {
    show(false)
    button.focus({ preventScroll: true })
  }
  show(false)
  button.addEventListener('click', () => {
    show(true)
    keep.focus()
  })
  keep.addEventListener('click', close)
  ask.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') close()
  })
  required(ask, '[data-ask-clear]').addEventListener('click', () => {
    show(false)
    clear()
    // There is nothing left to clear: the next thing is a reading.
    root.querySelector<HTMLElement>('[data-field]')?.focus({ preventScroll: true })
  })
}
