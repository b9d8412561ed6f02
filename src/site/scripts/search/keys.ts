import { load, save } from '../store.ts'
import { makeBoard } from './key-board.ts'
import { keyRows } from './key-rows.ts'
import type { KeyLabels } from './labels.ts'

/** Remembers on this panel that the keys were opened by their button: some panels pass a touch off as a mouse. */
const wanted = 'fettle.keys'
/** Below this a screen is a phone's, which brings its own keys. In CSS px, the shorter side. */
const phoneSide = 480

export interface Keys {
  /** Opens them for a finger, where the panel brings none of its own. */
  openFor(pointerType: string): void
  close(): void
}

/**
 * Keys on the screen for a panel that has none: they open when the field is touched, or by a button beside it. A real
 * keyboard goes on working.
 */
export function startKeys(form: HTMLFormElement, input: HTMLInputElement, labels: KeyLabels): Keys {
  const toggle = document.createElement('button')
  toggle.type = 'button'
  toggle.className = 'keys-toggle'
  toggle.textContent = labels.keys
  toggle.setAttribute('aria-expanded', 'false')
  form.append(toggle)

  const board = makeBoard(keyRows(document.documentElement.lang), labels, {
    type: (text) => typeInto(input, text),
    erase: () => eraseFrom(input),
    clear: () => replaceText(input, '', 0, input.value.length),
    find: () => form.requestSubmit(),
    close: () => close(),
  })
  board.hidden = true
  form.after(board)

  const keepInView = () => makeRoom(form, board)
  const open = () => {
    if (!board.hidden) return
    input.inputMode = 'none'
    board.hidden = false
    toggle.setAttribute('aria-expanded', 'true')
    document.documentElement.classList.add('with-keys')
    keepInView()
    addEventListener('resize', keepInView)
  }
  const close = () => {
    if (board.hidden) return
    input.removeAttribute('inputmode')
    board.hidden = true
    toggle.setAttribute('aria-expanded', 'false')
    document.documentElement.classList.remove('with-keys')
    removeEventListener('resize', keepInView)
    save(wanted, undefined)
  }

  toggle.addEventListener('click', () => {
    if (!board.hidden) {
      close()
      return
    }
    open()
    save(wanted, 'yes')
    input.focus({ preventScroll: true })
  })
  // Told before the field has the focus, so that the panel does not bring its own keys. Ours come with the click: the
  // page may be scrolled for them, and would slide away from under the finger.
  const wants = (pointerType: string) => (pointerType === 'touch' && Math.min(screen.width, screen.height) >= phoneSide) || load(wanted) !== undefined
  input.addEventListener('pointerdown', ({ pointerType }) => {
    if (wants(pointerType)) input.inputMode = 'none'
  })
  input.addEventListener('pointercancel', () => {
    if (board.hidden) input.removeAttribute('inputmode')
  })
  input.addEventListener('click', () => {
    if (input.inputMode === 'none') open()
  })
  input.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape' && input.value === '') close()
  })
  return {
    close,
    openFor(pointerType) {
      if (wants(pointerType)) open()
    },
  }
}

/** The page ends above the keys and is scrolled so that the field stands above them too, with room for results. */
function makeRoom(form: HTMLElement, board: HTMLElement): void {
  document.documentElement.style.setProperty('--keys-height', `${board.offsetHeight}px`)
  const roomy = 320
  const free = innerHeight - board.offsetHeight
  const { top, bottom } = form.getBoundingClientRect()
  if (top < 0 || free - bottom < Math.min(roomy, free / 2)) scrollBy(0, top - 8)
}

function typeInto(input: HTMLInputElement, text: string): void {
  const end = input.value.length
  replaceText(input, text, input.selectionStart ?? end, input.selectionEnd ?? end)
}

function eraseFrom(input: HTMLInputElement): void {
  const end = input.selectionEnd ?? input.value.length
  const start = input.selectionStart ?? end
  replaceText(input, '', start === end ? Math.max(0, start - 1) : start, end)
}

function replaceText(input: HTMLInputElement, text: string, from: number, to: number): void {
  input.setRangeText(text, from, to, 'end')
  input.dispatchEvent(new Event('input', { bubbles: true }))
}
