/** Keeps small things on this panel. All bundles opened from disk share one store, so keys carry machine and page. */
export function pageKey(name: string): string {
  const site = document.documentElement.dataset.site ?? ''
  const file = location.pathname.split('/').slice(-2).join('/')
  return `fettle.${site}.${file}.${name}`
}

export function load(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined
  } catch {
    return undefined
  }
}

export function save(key: string, value: string | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(key)
    else localStorage.setItem(key, value)
  } catch {
    // Storage is full or off: the page goes on without memory.
  }
}
