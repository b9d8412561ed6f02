import { readQuantity, type Unread } from '../../../signals/read-quantity.ts'
import { fieldText, stateText } from '../../meter/meter-words.ts'
import { fill } from '../../words/fill.ts'
import { element, required } from '../dom.ts'
import type { JudgedField, MeterPage } from './meter-state.ts'
import { expectedText } from './show-fields.ts'

/** Units that a meter may show, whatever the point is read in: a wrong one is refused, not hidden. */
const meterUnits = ['V', 'mV', 'mA', 'A', 'Ω', 'kΩ', '°C', '°F']
/** What a gauge may show in place of the unit of a point. */
const gaugeUnits: Readonly<Record<string, readonly string[]>> = {
  bar: ['psi', 'kPa', 'mbar'],
  mbar: ['Pa', 'psi', 'bar'],
  mm: ['cm', 'in'],
  'l/min': ['gal/min', 'm³/h'],
  Hz: ['kHz'],
  MΩ: ['GΩ'],
}

const unitsFor = (unit: string): readonly string[] =>
  meterUnits.includes(unit) ? meterUnits : [unit, ...(gaugeUnits[unit] ?? []), ...meterUnits].slice(0, meterUnits.length)

/** The number keys. `open` asks for the reading of a field; `take` gets it with its unit, or undefined to remove it. */
export function startKeys(page: MeterPage, take: (id: string, text: string | undefined) => void): { open(it: JudgedField): void } {
  const { root, words, signal, sheet } = page
  const dialog = required<HTMLDialogElement>(root, '[data-keys]')
  const input = required<HTMLInputElement>(dialog, '[data-keys-input]')
  const refused = required<HTMLElement>(dialog, '[data-keys-refused]')
  const unitRow = required<HTMLElement>(dialog, '[data-keys-units]')
  let asked: JudgedField | undefined
  let unit = ''
  /** Until the first key, which takes the place of the reading of before. */
  let isUntouched = true

  const chooseUnit = (chosen: string) => {
    unit = chosen
    for (const button of unitRow.querySelectorAll('button')) button.setAttribute('aria-pressed', String(button.textContent === unit))
    refused.textContent = ''
  }
  const finish = (text: string | undefined) => {
    if (asked) take(asked.field.id, text)
    dialog.close()
  }
  const enter = () => {
    if (!asked) return
    // A unit that was typed counts before the one that is tapped.
    const typed = input.value.trim()
    const text = /\d[.,]?$/.test(typed) ? `${typed} ${unit}` : typed
    const read = readQuantity(text, asked.field.unit)
    if ('value' in read) finish(text)
    else refused.textContent = refusalText(read, asked.field.unit)
  }
  const refusalText = ({ unread, perhaps }: Unread, wanted: string) =>
    [
      signal.unread[unread],
      ...(unread === 'wrong-dimension' || unread === 'unknown-unit' ? [fill(words.meterWrongUnit, { unit: wanted })] : []),
      ...(perhaps ? [fill(words.meterPerhaps, { units: perhaps.join(', ') })] : []),
    ].join(' ')

  for (const button of dialog.querySelectorAll<HTMLElement>('[data-key]'))
    button.addEventListener('click', () => {
      const key = button.dataset.key ?? ''
      input.value = pressed(isUntouched && /^(?:\d|decimal)$/.test(key) ? '' : input.value, key, words.meterDecimal)
      isUntouched = false
      refused.textContent = ''
    })
  required(dialog, '[data-keys-take]').addEventListener('click', enter)
  required(dialog, '[data-keys-remove]').addEventListener('click', () => finish(undefined))
  required(dialog, '[data-keys-close]').addEventListener('click', () => dialog.close())
  input.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return
    event.preventDefault()
    enter()
  })

  return {
    open(it) {
      asked = it
      unitRow.replaceChildren(
        ...unitsFor(it.field.unit).map((symbol) => {
          const button = element('button', { text: symbol })
          button.setAttribute('type', 'button')
          button.addEventListener('click', () => chooseUnit(symbol))
          return button
        }),
      )
      const [, number = '', typedUnit = it.field.unit] = /^(.*?)\s*([^\d\s.,]+)?$/.exec(it.text ?? '') ?? []
      input.value = number
      isUntouched = true
      chooseUnit(typedUnit)
      const state = stateText(words, signal, it.field, sheet)
      required(dialog, '[data-keys-title]').textContent = [fieldText(words, signal, it.field), ...(state ? [state] : [])].join(', ')
      required(dialog, '[data-keys-expected]').textContent = expectedText(it, words)
      dialog.showModal()
      input.focus()
    },
  }
}

/** What stands in the field after a key. */
export function pressed(text: string, key: string, decimal: string): string {
  if (key === 'delete') return text.slice(0, -1)
  if (key === 'sign') return text.startsWith('−') ? text.slice(1) : `−${text}`
  if (key === 'decimal') return /[.,]/.test(text) ? text : `${text === '' ? '0' : text}${decimal}`
  // A zero in front says nothing.
  return text.replace(/^(−?)0$/, '$1') + key
}
