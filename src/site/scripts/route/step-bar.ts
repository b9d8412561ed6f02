import { element } from '../dom.ts'

export interface StepBar {
  bar: HTMLElement
  /** `undefined`: every step is ticked. `isInView`: the step that is in focus can be seen, and so be called done. */
  show(at: { number: number; isFirst: boolean; isLast: boolean; isInView: boolean } | undefined): void
}

/** The two large buttons above the thumb rail. They stand in the step that is in focus, so that keys reach them from there. */
export function stepBar(words: DOMStringMap, go: { on(): void; back(): void }): StepBar {
  const back = element('button', { text: words.back ?? '' }) as HTMLButtonElement
  const on = element('button', { className: 'step-on' }) as HTMLButtonElement
  const said = element('p', { text: words.all ?? '' })
  said.setAttribute('role', 'status')
  for (const button of [back, on]) button.type = 'button'
  back.addEventListener('click', go.back)
  on.addEventListener('click', go.on)
  return {
    bar: element('div', { className: 'step-bar' }, said, back, on),
    show(at) {
      said.hidden = at !== undefined
      back.disabled = at?.isFirst ?? false
      const text = !at ? words.clearAll : !at.isInView ? words.to?.replace('{step}', String(at.number)) : at.isLast ? words.last : words.next
      if (on.textContent !== text) on.textContent = text ?? ''
    },
  }
}
