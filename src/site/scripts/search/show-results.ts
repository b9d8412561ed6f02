import type { SearchKind } from '../../../search/entry.ts'
import type { ExactHit, PageHit, PassagePart, SearchResult } from '../../../search/result.ts'
import { fill } from '../../words/fill.ts'
import type { SearchLabels } from './labels.ts'

type Hit = ExactHit | PageHit

/** Shows what was found as one list for each kind, the kind of the best hit first. Text is never read as HTML. */
export function showResults(place: HTMLElement, { exact, pages }: Pick<SearchResult, 'exact' | 'pages'>, labels: SearchLabels): void {
  const groups = new Map<SearchKind, Hit[]>()
  for (const hit of [...exact, ...pages]) groups.set(hit.kind, [...(groups.get(hit.kind) ?? []), hit])
  place.textContent = ''
  place.append(...[...groups].map(([kind, hits]) => group(kind, hits, labels)))
}

/** Of each kind so many at first, so that the next kind is in view. */
const firstOfKind = 4

function group(kind: SearchKind, hits: readonly Hit[], labels: SearchLabels): HTMLElement {
  const heading = element('h2', 'found-kind', [labels.kinds[kind]])
  heading.id = `found-${kind}`
  const items = hits.map((hit) => element('li', '', [row(hit)]))
  const list = element('ul', 'rows found-list', items)
  const section = element('section', 'found', [heading, list])
  // A button that would save one row is no gain.
  if (items.length > firstOfKind + 1) {
    const rest = items.slice(firstOfKind)
    for (const item of rest) item.hidden = true
    const all = element('button', 'found-all', [fill(labels.allOfKind, { count: hits.length })])
    all.setAttribute('type', 'button')
    all.setAttribute('aria-describedby', heading.id)
    all.addEventListener('click', () => {
      for (const item of rest) item.hidden = false
      all.remove()
      rest[0]?.querySelector('a')?.focus()
    })
    section.append(all)
  }
  section.setAttribute('aria-labelledby', heading.id)
  return section
}

function row(hit: Hit): HTMLElement {
  const { kind, id, title, place, passage = [] } = hit
  const section = 'section' in hit && hit.section ? [element('span', 'found-section', [hit.section])] : []
  const text = passage.length > 0 ? [element('small', 'found-passage', passage.map(marked))] : []
  const link = element('a', 'row', [
    // The space keeps the name and the title apart where the row is read out or copied.
    ...(id === undefined ? [] : [element('span', kind === 'tag' ? 'label' : 'row-number mono', [id]), ' ']),
    element('span', 'row-main', [element('span', 'found-title', [title]), ...section, ...text]),
    ...(place === undefined ? [] : [' ', element('small', 'row-side', [place])]),
  ])
  link.setAttribute('href', hit.url)
  return link
}

function marked({ text, marked }: PassagePart): Node | string {
  return marked ? element('mark', '', [text]) : text
}

function element(name: string, className: string, content: readonly (Node | string)[]): HTMLElement {
  const made = document.createElement(name)
  if (className !== '') made.className = className
  made.append(...content)
  return made
}
