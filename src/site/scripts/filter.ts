/** Shortens the list that follows a filter, by words, area and kind. */
export function startFilters(): void {
  for (const form of document.querySelectorAll<HTMLFormElement>('[data-filter]')) startFilter(form)
}

function startFilter(form: HTMLFormElement): void {
  const list = nextList(form)
  if (!list) return
  const text = form.querySelector<HTMLInputElement>('[data-filter-text]')
  const area = form.querySelector<HTMLSelectElement>('[data-filter-area]')
  const kind = form.querySelector<HTMLSelectElement>('[data-filter-kind]')
  const count = form.querySelector('[data-filter-count]')
  const items = [...list.children]
    .filter((it): it is HTMLElement => it instanceof HTMLElement)
    .map((item) => ({ item, words: fold(item.textContent ?? '') }))
  const apply = () => {
    const wanted = fold(text?.value ?? '')
      .split(' ')
      .filter(Boolean)
    let shown = 0
    for (const { item, words } of items) {
      const fits =
        wanted.every((word) => words.includes(word)) &&
        (!area?.value || item.dataset.area === area.value) &&
        (!kind?.value || item.dataset.kind === kind.value)
      item.hidden = !fits
      if (fits) shown++
    }
    if (count) count.textContent = shown === 0 ? (form.dataset.nothing ?? '') : (form.dataset.shown ?? '').replace('{count}', String(shown))
  }
  form.hidden = false
  form.addEventListener('input', apply)
  form.addEventListener('submit', (event) => event.preventDefault())
  apply()
}

function nextList(form: Element): Element | undefined {
  for (let at = form.nextElementSibling; at; at = at.nextElementSibling) if (at.matches('[data-filter-list]')) return at
  return undefined
}

const fold = (text: string) =>
  text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/\s+/g, ' ')
