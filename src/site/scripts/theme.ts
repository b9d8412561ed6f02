import { save } from './store.ts'

/** The switch between light and dark, the print button, and language links that keep the place on the page. */
export function startTheme(): void {
  const root = document.documentElement
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-theme-switch]')) {
    button.hidden = false
    button.addEventListener('click', () => {
      const dark = root.dataset.theme ? root.dataset.theme === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches
      root.dataset.theme = dark ? 'light' : 'dark'
      save('fettle.theme', root.dataset.theme)
    })
  }
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-print]')) {
    button.hidden = false
    button.addEventListener('click', () => print())
  }
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-keep-anchor]')) {
    link.addEventListener('click', () => {
      link.href = link.href.split('#')[0] + location.hash
    })
  }
}
