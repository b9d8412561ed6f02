import { type Field, placeOfPoint } from '../../meter/meter-sheet.ts'
import { bandText, basisText, verdictText } from '../../meter/meter-words.ts'
import type { JudgedField, MeterPage, MeterState } from './meter-state.ts'

/** Readings, limits and verdicts on the buttons of the fields, and which taps are set. */
export function showFields(page: MeterPage, { judged, kept }: MeterState): void {
  for (const it of judged) {
    const button = page.root.querySelector<HTMLElement>(`[data-field="${it.field.id}"]`)
    if (button) showField(page, it, button)
  }
  for (const button of page.root.querySelectorAll<HTMLElement>('[data-light]')) {
    const indicator = page.indicators.find((name) => name === button.dataset.light)
    button.setAttribute('aria-pressed', String(indicator !== undefined && kept.lights[indicator] === button.dataset.pattern))
  }
}

function showField({ words }: MeterPage, it: JudgedField, button: HTMLElement): void {
  const { text, verdict } = it
  const set = (selector: string, shown: string) => {
    const place = button.querySelector(selector)
    if (place) place.textContent = shown
  }
  set('[data-value]', text ?? `– ${it.field.unit}`)
  set('[data-expected]', expectedText(it, words))
  set('[data-verdict]', verdict ? verdictText(words, verdict) : '')
  button.dataset.verdict = verdict ?? ''
}

/** Its limits hang on the supply. */
const isOfSupply = ({ name }: Field) => Object.hasOwn(placeOfPoint, name)

/** `expected 20.2 to 23.7 V, limit 11.0 to 24.3 V (standard)`. */
export function expectedText({ field, expected, text }: JudgedField, words: MeterPage['words']): string {
  if (!expected) return text === undefined || !isOfSupply(field) ? '' : words.meterSupplyFirst
  const { band, usual, unit, basis } = expected
  const said = bandText(words, usual, unit)
  const limit = bandText(words, band, unit)
  const both = said === limit ? `${words.meterExpected} ${said}` : `${words.meterExpected} ${said}, ${words.meterLimit} ${limit}`
  return `${both} (${basisText(words, basis)})`
}
