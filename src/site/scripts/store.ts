/** Keeps small things on this panel. All bundles opened from disk share one store, so keys carry machine and page. */
export function pageKey(name: string): string {
  const site = document.documentElement.dataset.site ?? ''
  const file = location.pathname.split('/').slice(-2).join('/')
  return `fettle.${site}.${file}.${name}`
}

/** For good on this panel, or until the page's tab is closed. */
type Keeping = 'localStorage' | 'sessionStorage'

export function load(key: string, keeping: Keeping = 'localStorage'): string | undefined {
  try {
    return window[keeping].getItem(key) ?? undefined
  } catch {
    return undefined
  }
}

export function save(key: string, value: string | undefined, keeping: Keeping = 'localStorage'): void {
  try {
    if (value === undefined) window[keeping].removeItem(key)
    else window[keeping].setItem(key, value)
  } catch {
    // Storage is full or off: the page goes on without memory.
  }
}
