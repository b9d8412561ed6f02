/** The address of a file beside the script that every page loads. */
function assetAddress(name: string): string {
  const own = document.querySelector<HTMLScriptElement>('script[src*="assets/site.js"]')
  return (own?.src ?? '').replace('site.js', name)
}

export function loadStyles(name: string, then: () => void): void {
  const link = document.createElement('link')
  link.rel = 'stylesheet'
  link.href = assetAddress(name)
  link.addEventListener('load', then)
  document.head.append(link)
}

/** A script is loaded once: a second touch while it comes changes nothing. */
export function loadScript(name: string, then: () => void): void {
  if (document.querySelector(`script[data-later="${name}"]`)) return
  const script = document.createElement('script')
  script.dataset.later = name
  script.src = assetAddress(name)
  script.addEventListener('load', then)
  document.head.append(script)
}
