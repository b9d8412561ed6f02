import { load, save } from './store.ts'

/** What a reader can set for this screen, with the values besides the usual one. As `data-<name>` the styles know it. */
const choices: Readonly<Record<string, readonly string[]>> = {
  theme: ['light', 'dark'],
  text: ['larger', 'largest'],
  hand: ['left'],
  sizes: ['panel', 'office'],
}

const keyOf = (name: string) => `fettle.${name}`

function chosen(name: string): string {
  const kept = load(keyOf(name)) ?? ''
  return choices[name]?.includes(kept) ? kept : ''
}

/** Runs before the first paint: what was chosen on this screen. */
export function applyDisplay(): void {
  for (const name of Object.keys(choices)) {
    const value = chosen(name)
    if (value) document.documentElement.dataset[name] = value
    else delete document.documentElement.dataset[name]
  }
}

/** The choices below the nameplate. */
export function startDisplay(): void {
  const toggle = document.querySelector<HTMLButtonElement>('[data-display-switch]')
  const section = document.getElementById('display')
  if (!toggle || !section) return
  toggle.hidden = false
  const open = (on: boolean) => {
    section.hidden = !on
    toggle.setAttribute('aria-expanded', String(on))
  }
  toggle.addEventListener('click', () => open(section.hidden !== false))
  addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || section.hidden) return
    open(false)
    toggle.focus()
  })
  const groups = [...section.querySelectorAll<HTMLElement>('[data-display]')]
  const show = () => {
    applyDisplay()
    for (const group of groups)
      for (const button of group.querySelectorAll('button'))
        button.setAttribute('aria-pressed', String(button.value === chosen(group.dataset.display ?? '')))
  }
  for (const group of groups)
    group.addEventListener('click', ({ target }) => {
      if (!(target instanceof HTMLButtonElement)) return
      save(keyOf(group.dataset.display ?? ''), target.value || undefined)
      show()
    })
  show()
}
