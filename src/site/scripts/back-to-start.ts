import { loadStyles } from './load-asset.ts'
import { keyOf } from './meter/kept.ts'
import { load } from './store.ts'

/** The warning stands this long in ms, or half the time where that is shorter. */
const warningMs = 60_000
const lookMs = 1000

/**
 * Takes the screen of the machine back to its start page after a time without a touch, with a warning before it. Never from a
 * lockout or a drawing, nor from a page with ticks, readings or other entries: somebody is at work with it.
 */
export function startBackToStart(): void {
  const { backMin, panel, sizes } = document.documentElement.dataset
  const afterMs = Number(backMin) * 60_000
  const home = document.querySelector<HTMLAnchorElement>('.plate')?.href
  const warning = document.querySelector<HTMLElement>('[data-stay]')
  if (!(afterMs > 0) || !home || !warning || document.body.classList.contains('kind-start')) return
  const isPanel = sizes === 'panel' || (sizes !== 'office' && panel !== undefined && matchMedia(panel).matches)
  if (!isPanel) return
  loadStyles('display.css', () => {})
  const warnMs = afterMs - Math.min(warningMs, afterMs / 2)
  let touchedAt = Date.now()
  let before: Element | null = null
  let leaving = false
  const touched = () => {
    touchedAt = Date.now()
    if (warning.hidden) return
    warning.hidden = true
    if (before instanceof HTMLElement) before.focus({ preventScroll: true })
  }
  // The click and not the first contact, so that the touch that answers does nothing else.
  for (const event of ['click', 'keydown'] as const) addEventListener(event, touched, true)
  for (const event of ['pointerdown', 'wheel', 'scroll'] as const)
    addEventListener(event, () => warning.hidden && touched(), { capture: true, passive: true })
  addEventListener('pageshow', () => {
    leaving = false
    touched()
  })
  setInterval(() => {
    const idleMs = Date.now() - touchedAt
    if (leaving || idleMs < warnMs) return
    if (isAtWork()) touched()
    else if (warning.hidden) {
      before = document.activeElement
      warning.hidden = false
      warning.querySelector('button')?.focus({ preventScroll: true })
    } else if (idleMs >= afterMs) {
      leaving = true
      location.assign(home)
    }
  }, lookMs)
}

function isAtWork(): boolean {
  if (document.body.matches('.kind-lockout, .kind-drawing') || document.querySelector('.sheet.full, dialog[open]')) return true
  const entries = [...document.querySelectorAll<HTMLInputElement>('main input')].filter((it) => !it.closest('.search-form, .filter'))
  const isEntered = (it: HTMLInputElement) =>
    it.type === 'checkbox' || it.type === 'radio' ? it.checked !== it.defaultChecked : it.value !== it.defaultValue
  const meters = [...document.querySelectorAll<HTMLElement>('[data-meter]')]
  return entries.some(isEntered) || meters.some((meter) => load(keyOf(meter)) !== undefined)
}
