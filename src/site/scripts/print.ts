/** The print buttons. */
export function startPrint(): void {
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-print]')) {
    button.hidden = false
    button.addEventListener('click', () => print())
  }
}
