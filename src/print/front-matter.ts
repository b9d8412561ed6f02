import type { BookFacts, FactNames } from './book-facts.ts'
import { escapeHtml } from './html-tree.ts'
import { pageToken } from './page-numbers.ts'

export function coverHtml(facts: BookFacts, names: FactNames, languageLabel: string): string {
  const rows: [string, string][] = [
    [names.model, facts.model],
    [names.serial, facts.serial],
    [names.document, facts.document],
    [names.revision, facts.revision],
    [names.date, facts.date],
    [languageLabel, facts.languageName],
    [names.optionsFitted, facts.options.join(', ')],
    [names.builder, facts.builder],
    [names.checkValue, facts.checkValue],
  ]
  const said = rows.filter(([, text]) => text !== '').map(([name, text]) => `<div><dt>${escapeHtml(name)}</dt><dd>${escapeHtml(text)}</dd></div>`)
  const version = facts.version === undefined ? '' : `<p class="cover-version">${escapeHtml(facts.version)}</p>`
  const mark = facts.demonstration === undefined ? '' : `<p class="cover-mark">${escapeHtml(facts.demonstration)}</p>`
  return `<section class="cover"><div class="cover-plate"><p class="cover-name">${escapeHtml(facts.name)}</p><p class="cover-model">${escapeHtml(facts.model)}</p>${version}<dl>${said.join('')}</dl></div>${mark}</section>`
}

export interface ContentsEntry {
  /** Number of the heading, or nothing. */
  number: string
  title: string
  id: string
  level: 1 | 2
}

export function contentsHtml(title: string, entries: readonly ContentsEntry[]): string {
  const items = entries.map(
    ({ number, title, id, level }) =>
      `<li class="contents-${level}"><a href="#${id}"><span class="contents-number">${escapeHtml(number)}</span><span class="contents-title">${escapeHtml(title)}</span><span class="contents-page">${pageToken(id)}</span></a></li>`,
  )
  return `<section class="contents"><h1 id="contents">${escapeHtml(title)}</h1><ol>${items.join('')}</ol></section>`
}
