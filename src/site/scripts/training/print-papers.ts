/** Each paper of a page is printed alone; a page printed by the browser's own means gives the first. */
export function startPapers(root: HTMLElement): void {
  for (const button of root.querySelectorAll<HTMLElement>('[data-print-paper]')) {
    button.addEventListener('click', () => {
      document.body.dataset.prints = button.dataset.printPaper
      print()
    })
  }
  window.addEventListener('afterprint', () => delete document.body.dataset.prints)
}
