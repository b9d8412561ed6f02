import { fieldText, stateText } from '../../meter/meter-words.ts'
import type { Outcome } from '../../meter/outcome-of.ts'
import { fill } from '../../words/fill.ts'
import { element, required } from '../dom.ts'
import { isEmpty } from './kept.ts'
import type { MeterPage, MeterState } from './meter-state.ts'
import { outcomeNodes, readingName } from './outcome-nodes.ts'

/** What the readings mean, and where to look next. `goTo` opens a field or brings a light into view. */
export function showOutcome(page: MeterPage, state: MeterState, goTo: (target: HTMLElement) => void): void {
  const { root, words } = page
  required(root, '[data-outcome]').replaceChildren(...outcomeNodes(page, state), ...nextNodes(page, state, goTo))
  const kept = required<HTMLElement>(root, '[data-kept]')
  kept.hidden = isEmpty(state.kept)
  kept.textContent = fill(words.meterKept, { when: whenText(state.kept.atMs) })
  for (const button of root.querySelectorAll<HTMLButtonElement>('[data-meter-clear], [data-meter-print]')) button.disabled = isEmpty(state.kept)
}

export const whenText = (atMs: number): string =>
  new Date(atMs).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' })

function nextNodes(page: MeterPage, { outcome }: MeterState, goTo: (target: HTMLElement) => void): HTMLElement[] {
  const { root, words } = page
  const next = nextOf(page, outcome)
  if (!next) return []
  const { selector, name } = next
  const target = root.querySelector<HTMLElement>(selector)
  const button = element('button', { text: words.meterGoThere })
  button.setAttribute('type', 'button')
  if (target) button.addEventListener('click', () => goTo(target))
  return [
    element(
      'div',
      { className: 'meter-next' },
      element('p', {}, element('b', { text: `${words.meterNext}: ` }), element('span', { text: name })),
      ...(target ? [button] : []),
    ),
  ]
}

/** What to look at next, and where it is entered. */
function nextOf(page: MeterPage, outcome: Outcome): { selector: string; name: string } | undefined {
  if (outcome.kind === 'faults' && outcome.findings.next) {
    const { next } = outcome.findings
    const selector = 'point' in next ? `[data-field="${next.point}.${next.state}"]` : `[data-light="${next.indicator}"]`
    return { selector, name: readingName(next, page) }
  }
  if (outcome.kind !== 'causes' || outcome.findings.next === undefined) return undefined
  const { words, signal, sheet, fields } = page
  const id = outcome.findings.next
  const field = fields.find((it) => it.id === id)
  const indicator = id.startsWith('tag') ? 'tag' : 'card-led'
  if (!field) return { selector: `[data-light="${indicator}"]`, name: signal.indicators[indicator] }
  const state = stateText(words, signal, field, sheet)
  return { selector: `[data-field="${id}"]`, name: [fieldText(words, signal, field), ...(state ? [state] : [])].join(', ') }
}
