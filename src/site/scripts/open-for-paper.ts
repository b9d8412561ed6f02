/** Opens what is folded while the page is printed: nobody unfolds paper. What stands beside its disclosure is shown by print.css. */
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
