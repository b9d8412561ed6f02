import { compare } from '../source/place.ts'
import { escaped } from '../training/packages/escaped.ts'
import { address } from './address.ts'
import { fill } from './words/fill.ts'
import { type Labels, labelsOf, languageName } from './words/labels.ts'

/** A built machine in a folder beside the page. */
export interface StartEntry {
  folder: string
  /** What the machine is, by language; empty for a build that does not say it. */
  name: Readonly<Record<string, string>>
  model: string
  serial: string
  revision: string
  /** Source language first; empty for a build that does not say them. */
  languages: readonly string[]
}

/** What tells a page of ours from a page of somebody else. */
export const startPageMark = '<meta name="generator" content="fettle start-page">'

/**
 * File name -> text of a page over built machines, one for each language that a machine has and the site has labels for. The one
 * in which most machines are written is `index.html`. Each holds its styles and its script, needs neither, and is the same
 * for the same machines in any order.
 */
export function startPages(entries: readonly StartEntry[], { style, script }: { style: string; script: string }): Map<string, string> {
  const sorted = entries.toSorted((a, b) => compare(a.model, b.model) || compare(a.serial, b.serial) || compare(a.folder, b.folder))
  const languages = languagesOf(sorted)
  return new Map(languages.map((language, index) => [fileOf(language, index), pageIn(language, { sorted, languages, style, script })]))
}

const fileOf = (language: string, index: number) => (index === 0 ? address.start : `index.${language}.html`)

function languagesOf(entries: readonly StartEntry[]): string[] {
  const known = [...new Set(entries.flatMap(({ languages }) => languages))].filter((language) => labelsOf(language))
  const written = (language: string) => entries.filter(({ languages }) => languages[0] === language).length
  return known.length === 0 ? ['en'] : known.sort((a, b) => written(b) - written(a) || compare(a, b))
}

interface Parts {
  sorted: readonly StartEntry[]
  languages: readonly string[]
  style: string
  script: string
}

function pageIn(language: string, { sorted, languages, style, script }: Parts): string {
  const labels = labelsOf(language)
  if (!labels) throw new Error(`the site has no labels for ${language}`)
  const count = sorted.length === 1 ? labels.oneMachine : fill(labels.machineCount, { count: sorted.length })
  const others = languages.map((other, index) =>
    other === language
      ? `<span class="plate-language" aria-current="true">${other.toUpperCase()}</span>`
      : `<a class="plate-language" hreflang="${other}" lang="${other}" href="${fileOf(other, index)}"><span class="hidden">${escaped(languageName(other))} </span>${other.toUpperCase()}</a>`,
  )
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${startPageMark}
<title>${escaped(labels.manuals)}</title>
<style>${style.replaceAll('</', '<\\/')}</style>
</head>
<body>
<header class="nameplate">
<div class="plate"><span class="plate-field plate-name"><span class="plate-value">${escaped(labels.manuals)}</span></span><span class="plate-field"><span class="plate-value">${escaped(count)}</span></span></div>
${languages.length > 1 ? `<div class="plate-tools">${others.join('')}</div>` : ''}
</header>
<main>
<h1>${escaped(labels.chooseMachine)}</h1>
<form class="filter" data-filter hidden data-shown="${escaped(labels.shown)}" data-nothing="${escaped(labels.nothingLeft)}">
<label><span>${escaped(labels.filter)}</span><input type="text" data-filter-text placeholder="${escaped(labels.machineHint)}" autocomplete="off" autocapitalize="off" spellcheck="false"></label>
<p class="filter-count" role="status" data-filter-count></p>
</form>
<ul class="machines" style="--languages: ${Math.max(...sorted.map(({ languages }) => languages.length))}" data-filter-list>
${sorted.map((entry) => item(entry, language, labels)).join('\n')}
</ul>
</main>
<script>${script.replaceAll('</', '<\\/')}</script>
</body>
</html>
`
}

function item(entry: StartEntry, language: string, labels: Labels): string {
  const { model, serial, revision, languages, name } = entry
  const own = languages.includes(language) ? language : languages[0]
  const spoken = own === undefined || own === language ? '' : ` lang="${own}"`
  const called = (own === undefined ? undefined : name[own]) ?? model
  const field = (key: string, value: string) =>
    `<span class="machine-field"><span class="machine-key">${escaped(key)}</span> <span class="mono">${escaped(value)}</span></span>`
  const links = languages.map(
    (it) =>
      `<a class="plate-language" hreflang="${it}" lang="${it}" href="${escaped(addressOf(entry, it))}"><span class="hidden">${escaped(languageName(it))} </span>${it.toUpperCase()}</a>`,
  )
  return `<li><a class="machine" href="${escaped(addressOf(entry, own))}"><span class="machine-name"${spoken}>${escaped(called)}</span>${field(labels.model, model)}${field(labels.serial, serial)}${field(labels.revision, revision)}</a>${links.length > 0 ? `<span class="machine-languages" role="group" aria-label="${escaped(fill(labels.languagesOf, { name: called, serial }))}">${links.join('')}</span>` : ''}</li>`
}

/** The start of a machine's site in a language, from the page; its source language has no folder of its own. */
function addressOf({ folder, languages }: StartEntry, language: string | undefined): string {
  const inLanguage = language === undefined || language === languages[0] ? address.start : `${language}/${address.start}`
  return `${encodeURIComponent(folder)}/${inLanguage}`
}
