import { type KeyRows, numberKeys } from './key-rows.ts'
import type { KeyLabels } from './labels.ts'

export interface KeyActs {
  type(text: string): void
  erase(): void
  clear(): void
  find(): void
  close(): void
}

/** Draws the keys: letters on the left, numbers on the right, words for what is no letter. */
export function makeBoard({ rows, accents }: KeyRows, labels: KeyLabels, acts: KeyActs): HTMLElement {
  let accented = false
  const letters = [...rows.join('')].map((letter) => ({ letter, key: pressKey(letter, () => typeLetter(letter)) }))
  const accentKey = pressKey(labels.accents, () => setAccented(!accented), 'key-word')
  const typeLetter = (letter: string) => {
    acts.type((accented && accents?.[letter]) || letter)
    setAccented(false)
  }
  const setAccented = (on: boolean) => {
    accented = on
    accentKey.setAttribute('aria-pressed', String(on))
    for (const { letter, key } of letters) key.textContent = (on && accents?.[letter]) || letter
  }
  setAccented(false)

  const keyOf = (letter: string) => letters.filter((it) => it.letter === letter).map(({ key }) => key)
  const letterRows = rows.map((row, index) => {
    const keys = [...row].flatMap(keyOf)
    if (index < rows.length - 1) return block('keys-row', keys)
    return block('keys-row', [...keys, ...(accents ? [accentKey] : []), pressKey(labels.erase, acts.erase, 'key-word')])
  })
  const lastRow = block('keys-row', [
    clickKey(labels.clear, acts.clear),
    pressKey(labels.space, () => acts.type(' '), 'key-space'),
    clickKey(labels.find, acts.find),
    clickKey(labels.closeKeys, acts.close),
  ])
  const numbers = numberKeys.map((text, index) => {
    const key = pressKey(text, () => acts.type(text))
    // On a narrow screen the numbers stand in one line, in the order of counting.
    key.style.setProperty('--place', text === '0' ? '10' : /\d/.test(text) ? text : String(11 + index))
    return key
  })
  const board = block('keys', [block('keys-letters', [...letterRows, lastRow]), block('keys-numbers', numbers)])
  board.setAttribute('role', 'group')
  board.setAttribute('aria-label', labels.keys)
  return board
}

function block(className: string, content: readonly HTMLElement[]): HTMLElement {
  const made = document.createElement('div')
  made.className = className
  made.append(...content)
  return made
}

/** A key that acts when it goes down, as a real one does: two fingers in turn make no clicks. */
function pressKey(text: string, act: () => void, className = ''): HTMLButtonElement {
  const key = makeKey(text, className)
  key.addEventListener('pointerdown', ({ button }) => {
    if (button === 0) act()
  })
  // Without a pointer, by a reading program, there is only the click.
  key.addEventListener('click', ({ detail }) => {
    if (detail === 0) act()
  })
  return key
}

/** A key that acts when it is let go: it takes the keys or the page away from under the finger. */
function clickKey(text: string, act: () => void): HTMLButtonElement {
  const key = makeKey(text, 'key-word')
  key.addEventListener('click', act)
  return key
}

function makeKey(text: string, className: string): HTMLButtonElement {
  const key = document.createElement('button')
  key.type = 'button'
  key.className = className === '' ? 'key' : `key ${className}`
  key.textContent = text
  // For fingers only: who goes through the page with a real keyboard does not need them.
  key.tabIndex = -1
  // The field keeps the focus and its cursor.
  key.addEventListener('pointerdown', (event) => event.preventDefault())
  key.addEventListener('mousedown', (event) => event.preventDefault())
  return key
}
