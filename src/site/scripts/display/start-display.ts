import { loadScript, loadStyles } from '../load-asset.ts'

/** The button at the nameplate opens the choices below it; they are loaded at the first touch. */
export function startDisplay(): void {
  const toggle = document.querySelector<HTMLButtonElement>('[data-display-switch]')
  if (!toggle) return
  toggle.hidden = false
  const show = (on: boolean) => {
    const section = document.getElementById('display')
    if (section) section.hidden = !on
    toggle.setAttribute('aria-expanded', String(on && section !== null))
  }
  toggle.addEventListener('click', () => {
    const section = document.getElementById('display')
    if (section) show(section.hidden !== false)
    else loadStyles('display.css', () => loadScript('display.js', () => show(true)))
  })
  addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || toggle.getAttribute('aria-expanded') !== 'true') return
    show(false)
    toggle.focus()
  })
}
