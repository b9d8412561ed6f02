import type { Graph } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { speak } from '../model/words.ts'
import { escapeHtml } from './html-tree.ts'

export interface PartsWords {
  title: string
  number: string
  description: string
  quantity: string
  maker: string
  spareClass: string
  stock: string
  usedBy: string
  /** Of an order sheet: the head of its empty column, and what to do with it. */
  order?: { head: string; hint: string }
  spare(spare: 'wear' | 'spare' | 'consumable' | 'none'): string
}

export interface PartsPlaces {
  /** Id of the row of a part. */
  anchor(number: string): string
  /** Link to the page of a device from the root of the site. */
  device(tag: string): string
}

/** Every part of the unit as a page of the site, for a table with a row each. */
export function partsPage({ parts, sourceLanguage, file }: Machine, graph: Graph, language: string, words: PartsWords, places: PartsPlaces): string {
  const heads = [
    words.number,
    words.description,
    words.quantity,
    words.maker,
    words.spareClass,
    words.stock,
    words.usedBy,
    ...(words.order ? [words.order.head] : []),
  ]
  const rows = parts.map((part) => {
    const number = part.number.value
    const description = speak(part.description, language, sourceLanguage)
    const cells = [
      `<td class="mono">${escapeHtml(number)}</td>`,
      `<td lang="${description.language}">${escapeHtml(description.text)}</td>`,
      cell(part.quantity ? `${part.quantity.value}${part.unit ? ` ${part.unit.value}` : ''}` : ''),
      cell([part.maker && speak(part.maker, language, sourceLanguage).text, part.makerNumber?.value].filter((it) => it !== undefined).join(' ')),
      cell(part.spare ? words.spare(part.spare.value) : ''),
      cell(part.stock ? String(part.stock.value) : ''),
      `<td>${graph
        .devicesWithPart(number)
        .map(({ tag }) => `<a class="label" href="${places.device(tag.value)}">${escapeHtml(tag.value)}</a>`)
        .join(' ')}</td>`,
      ...(words.order ? ['<td class="order-cell"></td>'] : []),
    ]
    return `<tr id="${places.anchor(number)}">${cells.join('')}</tr>`
  })
  const head = heads.map((it) => `<th scope="col">${escapeHtml(it)}</th>`).join('')
  const hint = words.order ? `<p class="order-hint">${escapeHtml(words.order.hint)}</p>` : ''
  return `<!doctype html><title>${escapeHtml(words.title)} · ${escapeHtml(file.model)}</title><body class="kind-parts"><main><h1>${escapeHtml(words.title)}</h1>${hint}<table class="data parts-table"><thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table></main></body>`
}

const cell = (text: string) => `<td>${escapeHtml(text)}</td>`
