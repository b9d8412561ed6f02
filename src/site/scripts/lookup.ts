import './younger-names.ts'
import { type LookupEntry, type LookupKind, lookUp, lookupKinds } from '../lookup.ts'
import { element } from './dom.ts'

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
      link(`${search}?q=${encodeURIComponent(asked.name)}`, { text: said.search.replace('{name}', asked.name), className: 'act' }),
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
  return element('p', { text })
}

function link(href: string, { text, className }: { text?: string; className: string }, ...children: readonly Node[]): HTMLElement {
  const made = element('a', { className, ...(text === undefined ? {} : { text }) }, ...children)
  made.setAttribute('href', href)
  return made
}

function listOf(near: readonly LookupEntry[]): HTMLElement {
  const rows = near.map(({ href, name, said }) => {
    const main = element('span', { className: 'row-main' }, element('b', { className: 'mono', text: name }), document.createTextNode(` ${said}`))
    return element('li', {}, link(href, { className: 'row' }, main))
  })
  return element('ul', { className: 'rows' }, ...rows)
}
