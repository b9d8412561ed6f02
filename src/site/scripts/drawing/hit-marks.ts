import { textBox } from '../../text-box.ts'
import type { Hit } from './find-on-sheets.ts'

const svg = 'http://www.w3.org/2000/svg'

/** Marks hits on the sheet that is shown, each with its number among all of them; one is marked more. */
export function hitMarks(drawing: Element): {
  show(hits: readonly (readonly [Hit, number])[]): void
  choose(index: number | undefined): SVGElement | undefined
} {
  const layer = document.createElementNS(svg, 'g')
  const marks = new Map<number, SVGElement>()
  drawing.querySelector('svg')?.append(layer)
  return {
    show(hits) {
      layer.textContent = ''
      marks.clear()
      for (const [{ text }, index] of hits) {
        const mark = document.createElementNS(svg, 'rect')
        for (const [name, value] of Object.entries(textBox(...text))) mark.setAttribute(name, String(value))
        mark.setAttribute('rx', '4')
        mark.setAttribute('class', 'hit')
        layer.append(mark)
        marks.set(index, mark)
      }
    },
    choose(index) {
      for (const [at, mark] of marks) mark.setAttribute('class', at === index ? 'hit hit-here' : 'hit')
      return index === undefined ? undefined : marks.get(index)
    },
  }
}
