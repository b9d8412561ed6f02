import { load, pageKey, save } from './store.ts'

/** Shortens the list that follows a filter, by words and by what is chosen. The choice is kept while the tab is open, for the way back. */
export function startFilters(): void {
  for (const form of document.querySelectorAll<HTMLFormElement>('[data-filter]')) startFilter(form)
}

function startFilter(form: HTMLFormElement): void {
  const list = nextList(form)
  if (!list) return
  const text = form.querySelector<HTMLInputElement>('[data-filter-text]')
  const choices = [...form.querySelectorAll<HTMLSelectElement>('[data-filter-by]')]
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
        choices.every(({ value, dataset }) => value === '' || (item.dataset[dataset.filterBy ?? ''] ?? '').split('\n').includes(value))
      item.hidden = !fits
      if (fits) shown++
    }
    if (count) count.textContent = shown === 0 ? (form.dataset.nothing ?? '') : (form.dataset.shown ?? '').replace('{count}', String(shown))
  }
  const key = pageKey('filter')
  const fields = [...(text ? [text] : []), ...choices]
  const kept = (load(key, 'sessionStorage') ?? '').split('\n')
  for (const [index, field] of fields.entries()) field.value = kept[index] ?? ''
  // A choice that this list does not have leaves the field empty, and would hide everything.
  for (const choice of choices) if (choice.selectedIndex < 0) choice.value = ''
  form.hidden = false
  form.addEventListener('input', () => {
    save(key, fields.map(({ value }) => value).join('\n'), 'sessionStorage')
    apply()
  })
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
