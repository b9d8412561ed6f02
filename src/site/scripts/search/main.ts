import { startFilters } from '../filter.ts'
import { startKeys } from './keys.ts'
import { readLabels } from './labels.ts'
import { startLiveSearch } from './live-search.ts'

/**
 * Wakes every `form[data-search]`: keys on the screen everywhere; results while typing where the page has
 * `[data-search-results]`. Without this script the form still leads to the search page, and that to the lists.
 */
for (const form of document.querySelectorAll<HTMLFormElement>('form[data-search]')) {
  const input = form.querySelector<HTMLInputElement>('input[name="q"]')
  if (!input) continue
  const labels = readLabels()
  startKeys(form, input, labels)
  const results = document.querySelector<HTMLElement>('[data-search-results]')
  const status = document.querySelector<HTMLElement>('[data-search-status]')
  if (results && status)
    startLiveSearch({ form, input, results, status, lists: document.querySelector<HTMLElement>('[data-search-fallback]') }, labels)
}

// A field that shortens a list has the keys too.
for (const form of document.querySelectorAll<HTMLFormElement>('form[data-filter]')) {
  const input = form.querySelector<HTMLInputElement>('[data-filter-text]')
  if (input) startKeys(form, input, readLabels())
}
startFilters()
