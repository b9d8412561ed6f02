import '../younger-names.ts'
import { signalWords } from '../../../signals/words/words.ts'
import { fieldsOf, healthyOf, indicatorsOf } from '../../meter/fields-of.ts'
import { isLightPattern, patternOf } from '../../meter/light-pattern.ts'
import type { MeterSheet } from '../../meter/meter-sheet.ts'
import { meterWords } from '../../words/meter.ts'
import { required } from '../dom.ts'
import { openForPaper } from '../open-for-paper.ts'
import { startClear } from './ask-clear.ts'
import { type Kept, keep, keyOf, nothingKept, restore } from './kept.ts'
import { startKeys } from './keys.ts'
import { type MeterPage, stateOf } from './meter-state.ts'
import { showFields } from './show-fields.ts'
import { showOutcome } from './show-outcome.ts'
import { showPath } from './show-path.ts'
import { showRecord } from './show-record.ts'

openForPaper()
for (const root of document.querySelectorAll<HTMLElement>('[data-meter]')) startMeter(root)

/** What readings and taps mean, from the first touch on; all of it stays on this panel until it is cleared. */
function startMeter(root: HTMLElement): void {
  const [words, signal] = [meterWords(document.documentElement.lang), signalWords(document.documentElement.lang)]
  // A device with nothing to enter has its tables only.
  const live = root.querySelector<HTMLElement>('[data-meter-live]')
  if (!words || !signal || !live) return
  const sheet: MeterSheet = JSON.parse(required(root, '[data-meter-sheet]').textContent ?? '')
  const page: MeterPage = { root, sheet, words, signal, fields: fieldsOf(sheet), indicators: indicatorsOf(sheet) }
  const key = keyOf(root)
  let kept = restore(
    key,
    page.fields.map(({ id }) => id),
    page.indicators,
  )
  const show = () => {
    const state = stateOf(page, kept)
    showFields(page, state)
    showPath(page, state)
    showOutcome(page, state, goTo)
    showRecord(page, state)
    return state
  }
  const change = (next: Omit<Kept, 'atMs'>) => {
    kept = { ...next, atMs: Date.now() }
    keep(key, kept)
    show()
  }
  const keys = startKeys(page, (id, text) => {
    const { [id]: _, ...others } = kept.readings
    change({ lights: kept.lights, readings: text === undefined ? others : { ...others, [id]: text } })
  })
  const goTo = (target: HTMLElement) => {
    target.scrollIntoView({ block: 'center' })
    target.focus({ preventScroll: true })
    if (target.dataset.field) openField(target.dataset.field)
  }
  const openField = (id: string) => {
    const it = stateOf(page, kept).judged.find(({ field }) => field.id === id)
    if (it) keys.open(it)
  }
  const tap = (lights: Kept['lights']) => change({ readings: kept.readings, lights: { ...kept.lights, ...lights } })

  root.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('button') : null
    if (!button) return
    const { field, light, pattern, quick } = button.dataset
    const indicator = page.indicators.find((name) => name === light)
    if (field) openField(field)
    if (quick) tap(quickLights(page, quick === 'reacts'))
    if (indicator && isLightPattern(pattern)) {
      const { [indicator]: before, ...others } = kept.lights
      change({ readings: kept.readings, lights: before === pattern ? others : { ...others, [indicator]: pattern } })
    }
  })
  startClear(root, () => {
    kept = nothingKept()
    keep(key, kept)
    show()
  })
  required(root, '[data-meter-print]').addEventListener('click', () => printRecord(root))
  live.hidden = false
  for (const table of root.querySelectorAll('[data-folds]')) table.removeAttribute('open')
  show()
}

/** The two complaints that come most, as what the lights then do. */
function quickLights({ sheet, indicators }: MeterPage, reacts: boolean): Kept['lights'] {
  const led = healthyOf(sheet)?.lights['output-led']
  // A 2-wire sensor shows nothing while its loop is open.
  const reacting = sheet.kind === 'switched' && sheet.circuit.output !== '2-wire' ? patternOf(led?.target?.[0], led?.none?.[0]) : undefined
  return {
    ...(reacting && indicators.includes('output-led') ? { 'output-led': reacting } : {}),
    ...(indicators.includes('tag') ? { tag: reacts ? ('never' as const) : ('always' as const) } : {}),
  }
}

/** The record of this meter alone on paper. */
function printRecord(meter: HTMLElement): void {
  const page = document.documentElement
  page.dataset.printing = 'record'
  meter.classList.add('meter-printed')
  const restore = () => {
    delete page.dataset.printing
    meter.classList.remove('meter-printed')
  }
  window.addEventListener('afterprint', restore, { once: true })
  print()
}
