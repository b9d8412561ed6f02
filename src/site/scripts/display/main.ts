import { panelWords } from '../../words/panel.ts'
import { element } from '../dom.ts'
import { save } from '../store.ts'
import { applyDisplay, chosenDisplay, displayKey } from './apply-display.ts'

const words = panelWords(document.documentElement.lang)
const head = document.querySelector('.head')
if (words && head && !document.getElementById('display')) head.append(choicesIn(words))

/** The choices, each group with the one that holds pressed. Sizes are chosen where the machine has a screen of its own. */
function choicesIn(said: NonNullable<ReturnType<typeof panelWords>>): HTMLElement {
  const section = element('section', { className: 'display' })
  section.id = 'display'
  section.hidden = true
  section.setAttribute('aria-label', said.display)
  const groups: [string, string, Record<string, string>][] = [
    ['text', said.displayText, { '': said.displayUsual, larger: said.displayLarger, largest: said.displayLargest }],
    ['theme', said.displayColours, { '': said.displayAsSet, light: said.displayLight, dark: said.displayDark }],
    ['hand', said.displayHand, { '': said.displayRight, left: said.displayLeft }],
  ]
  if (document.documentElement.dataset.panel !== undefined)
    groups.push(['sizes', said.displaySizes, { '': said.displayByScreen, panel: said.displayPanel, office: said.displayOffice }])
  const shows: (() => void)[] = []
  for (const [name, title, values] of groups) {
    const buttons = Object.entries(values).map(([value, text]) => {
      const button = element('button', { text })
      button.setAttribute('type', 'button')
      button.addEventListener('click', () => {
        save(displayKey(name), value || undefined)
        applyDisplay()
        for (const show of shows) show()
      })
      shows.push(() => button.setAttribute('aria-pressed', String(value === chosenDisplay(name))))
      return button
    })
    section.append(element('fieldset', {}, element('legend', { text: title }), ...buttons))
  }
  for (const show of shows) show()
  return section
}
