import type { Stretch } from '../../../signals/fault/row.ts'
import { placeOfIndicator } from '../../meter/meter-sheet.ts'
import { patternText, targetText } from '../../meter/meter-words.ts'
import { element } from '../dom.ts'
import type { MeterPage, MeterState } from './meter-state.ts'
import { suspectedOf } from './outcome-nodes.ts'

/** Where the drawing is broken: in the line after a point, or at the point itself. The first that the path has. */
const marks: Readonly<Record<Stretch, { cut?: readonly string[]; point?: string; word: readonly string[] }>> = {
  target: { point: 'device', word: ['device'] },
  supply: { point: 'device', word: ['device'] },
  device: { point: 'device', word: ['device'] },
  'signal-wire': { cut: ['wire', 'pin', 'device'], word: ['wire', 'pin', 'device'] },
  terminal: { point: 'terminal', word: ['terminal', 'card'] },
  card: { point: 'card', word: ['card'] },
  address: { cut: ['card'], word: ['address'] },
}

/** The readings at the points of the signal path, and the stretch that is suspected drawn as broken. */
export function showPath(page: MeterPage, state: MeterState): void {
  const points = new Map([...page.root.querySelectorAll<HTMLElement>('.path-line [data-place]')].map((point) => [point.dataset.place ?? '', point]))
  for (const point of points.values()) {
    point.classList.remove('path-cut', 'path-doubt')
    for (const old of point.querySelectorAll('.path-read, .path-suspected')) old.remove()
  }
  const write = (place: string, text: string, verdict = '') => {
    const line = element('span', { className: 'path-read', text })
    line.dataset.verdict = verdict
    // Without a pin or a terminal of its own, a reading stands at the nearest point.
    const near = points.get(place) ?? points.get(place === 'pin' || place === 'supply' ? 'device' : 'card') ?? points.get('address')
    near?.append(' ', line)
  }
  const { words, signal, sheet } = page
  for (const { field, text, verdict } of state.judged)
    if (text !== undefined) write(field.at, field.state ? `${text} ${targetText(words, signal, field.state, sheet)}` : text, verdict)
  for (const indicator of page.indicators) {
    const pattern = state.kept.lights[indicator]
    if (pattern) write(placeOfIndicator[indicator], patternText(words, signal, pattern, sheet))
  }
  const suspected = suspectedOf(state)
  if (!suspected) return
  const { cut, point, word } = marks[suspected]
  const first = (places: readonly string[]) => places.map((place) => points.get(place)).find((it) => it !== undefined)
  if (cut) first(cut)?.classList.add('path-cut')
  if (point) (points.get(point) ?? first(word))?.classList.add('path-doubt')
  first(word)?.append(' ', element('span', { className: 'path-suspected', text: `${words.meterSuspected}: ${signal.stretches[suspected]}` }))
}
