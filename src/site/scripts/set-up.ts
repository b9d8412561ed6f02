import { load, save } from './store.ts'

/** Shows what changes from the product that is on the machine now. The choice is kept until the tab is closed: it is of this shift. */
export function startSetUp(): void {
  const setUp = document.querySelector('[data-set-up]')
  const chooser = setUp?.querySelector<HTMLElement>('[data-set-up-now]')
  if (!setUp || !chooser) return
  const buttons = [...chooser.querySelectorAll<HTMLButtonElement>('[data-from]')]
  const lists = [...setUp.querySelectorAll<HTMLElement>('[data-set-up-from]')]
  const key = `fettle.${document.documentElement.dataset.site ?? ''}.on-now`
  const show = (from: string) => {
    for (const list of lists) list.hidden = list.dataset.setUpFrom !== from
    for (const button of buttons) button.setAttribute('aria-pressed', String(button.dataset.from === from))
  }
  for (const button of buttons)
    button.addEventListener('click', () => {
      const from = button.dataset.from ?? ''
      save(key, from, 'sessionStorage')
      show(from)
    })
  const kept = load(key, 'sessionStorage') ?? ''
  show(buttons.some(({ dataset }) => dataset.from === kept) ? kept : '')
  chooser.hidden = false
}
