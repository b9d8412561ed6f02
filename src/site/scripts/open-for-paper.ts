/** Opens what is folded while the page is printed: nobody unfolds paper. What stands beside its disclosure is shown by print.css. Every page with something folded has one of the scripts that call it. */
export function openForPaper(): void {
  let opened: Element[] = []
  addEventListener('beforeprint', () => {
    opened = [...document.querySelectorAll('main details:not([open]):not(.working-toggle)')]
    for (const it of opened) it.setAttribute('open', '')
  })
  addEventListener('afterprint', () => {
    for (const it of opened) it.removeAttribute('open')
    opened = []
  })
}
