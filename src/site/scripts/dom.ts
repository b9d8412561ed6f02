/** An element with its text; `children` come after it. */
export function element(
  name: string,
  { text, className, lang }: { text?: string; className?: string; lang?: string } = {},
  ...children: readonly Node[]
): HTMLElement {
  const made = document.createElement(name)
  if (text !== undefined) made.textContent = text
  if (className) made.className = className
  if (lang) made.lang = lang
  made.append(...children)
  return made
}

/** What the page is built with; a page without it is a fault of ours. */
export function required<E extends Element>(root: ParentNode, selector: string): E {
  const found = root.querySelector<E>(selector)
  if (!found) throw new Error(`the page has no ${selector}`)
  return found
}
