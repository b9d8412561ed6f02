import './younger-names.ts'
import { type LookupEntry, type LookupKind, lookUp, lookupKinds } from '../lookup.ts'

interface LookupData {
  entries: LookupEntry[]
  said: { nothing: string; none: string; several: string; near: string; search: string; kinds: Record<LookupKind, string> }
  search: string
}

const place = document.querySelector('[data-lookup]')
const written = document.querySelector('[data-lookup-data]')?.textContent
if (place && written) answer(place, JSON.parse(written) as LookupData)

/** Goes on to the page of what the address names, or says what is nearest to it. */
function answer(place: Element, { entries, said, search }: LookupData): void {
  const asked = askedFor()
  if (!asked) {
    place.replaceChildren(paragraph(said.nothing))
    return
  }
  const { found, near } = lookUp(entries, asked.kind, asked.name)
  // Replaced, so that the way back leads to the screen that asked.
  if (found) location.replace(found.href)
  else {
    const isSeveral = near.length > 1 && near.every(({ name }) => Number(name.replace(/^\D+/, '')) === Number(asked.name))
    const head = isSeveral ? said.several : said.none
    place.replaceChildren(
      paragraph(head.replace('{kind}', said.kinds[asked.kind]).replace('{name}', asked.name)),
      ...(near.length > 0 ? [...(isSeveral ? [] : [paragraph(said.near)]), listOf(near)] : []),
      link(`${search}?q=${encodeURIComponent(asked.name)}`, said.search.replace('{name}', asked.name), 'act'),
    )
  }
}

/** From `?alarm=217` or `#alarm=217`: a panel may cut off the query of a file. */
function askedFor(): { kind: LookupKind; name: string } | undefined {
  const sources = [new URLSearchParams(location.search), new URLSearchParams(location.hash.slice(1))]
  for (const kind of lookupKinds)
    for (const source of sources) {
      const name = source.get(kind)
      if (name !== null && name.trim() !== '') return { kind, name: name.trim() }
    }
  return undefined
}

function paragraph(text: string): HTMLElement {
  const element = document.createElement('p')
  element.textContent = text
  return element
}

function link(href: string, text: string, className: string): HTMLAnchorElement {
  const element = document.createElement('a')
  element.href = href
  element.className = className
  element.textContent = text
  return element
}

function listOf(near: readonly LookupEntry[]): HTMLElement {
  const list = document.createElement('ul')
  list.className = 'rows'
  for (const { href, name, said } of near) {
    const row = link(href, '', 'row')
    const main = document.createElement('span')
    main.className = 'row-main'
    const label = document.createElement('b')
    label.className = 'mono'
    label.textContent = name
    main.append(label, ` ${said}`)
    row.append(main)
    const item = document.createElement('li')
    item.append(row)
    list.append(item)
  }
  return list
}
