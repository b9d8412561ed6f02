import { fill } from '../../words/fill.ts'
import { element, required } from '../dom.ts'
import { startKeys } from '../search/keys.ts'
import { findAnchor, readFindAnchor } from './find-address.ts'
import type { FindLabels } from './find-labels.ts'
import { findOnSheets, type Hit } from './find-on-sheets.ts'
import { hitMarks } from './hit-marks.ts'
import { loadTexts } from './load-texts.ts'
import type { OpenedDrawing } from './start-drawing.ts'

/** Wakes the search in a drawing: the sheets where a word stands, its marks, and the way from one to the next. */
export function startFind({ sheet, drawing, view, show, turn }: OpenedDrawing): void {
  const panel = sheet.querySelector<HTMLElement>('[data-find]')
  const open = sheet.querySelector<HTMLButtonElement>('[data-find-open]')
  if (!panel || !open) return
  const labels: FindLabels = JSON.parse(required(panel, '[data-find-labels]').textContent ?? '')
  const form = required<HTMLFormElement>(panel, 'form')
  const input = required<HTMLInputElement>(panel, 'input')
  const status = required<HTMLElement>(panel, '[data-find-status]')
  const sheetList = required<HTMLElement>(panel, '[data-find-sheets]')
  const steps = panel.querySelectorAll<HTMLButtonElement>('[data-find-step]')
  const texts = loadTexts(required<HTMLScriptElement>(panel, '[data-find-texts]'))
  const keys = startKeys(form, input, labels)
  const marks = hitMarks(drawing)
  const here = Number(sheet.dataset.number)
  let hits: Hit[] = []
  let at: number | undefined

  const say = (text: string) => {
    status.textContent = text
  }
  const addressOf = (number: number) => document.querySelector<HTMLAnchorElement>(`[data-sheet-number="${number}"]`)?.href.split('#')[0]

  async function find(): Promise<void> {
    const query = input.value.trim()
    const sheets = await texts()
    if (query !== input.value.trim()) return
    hits = sheets ? findOnSheets(sheets, query) : []
    at = undefined
    marks.show(hits.flatMap((hit, index) => (hit.sheet === here ? [[hit, index] as const] : [])))
    for (const step of steps) step.disabled = hits.length === 0
    sheetList.textContent = ''
    const numbers = [...new Set(hits.map(({ sheet: number }) => number))]
    sheetList.append(...numbers.map((number) => sheetLink(number, query)))
    say(!sheets ? labels.failed : query === '' ? '' : hits.length === 0 ? labels.nothing : fill(labels.some, { count: hits.length }))
  }

  function sheetLink(number: number, query: string): HTMLElement {
    const first = hits.findIndex((hit) => hit.sheet === number)
    const count = hits.filter((hit) => hit.sheet === number).length
    const link = document.createElement('a')
    link.className = 'button'
    link.textContent = fill(labels.onSheet, { sheet: number, count })
    link.href = `${number === here ? '' : (addressOf(number) ?? '')}${findAnchor({ query, at: first })}`
    if (number === here) link.setAttribute('aria-current', 'page')
    link.addEventListener('click', (event) => {
      if (number !== here) return turn()
      event.preventDefault()
      goTo(first)
    })
    return element('li', {}, link)
  }

  function goTo(index: number): void {
    const hit = hits[index]
    if (!hit) return
    const anchor = findAnchor({ query: input.value.trim(), at: index })
    const other = hit.sheet === here ? undefined : addressOf(hit.sheet)
    if (other !== undefined) {
      turn()
      location.assign(other + anchor)
      return
    }
    at = index
    const mark = marks.choose(index)
    if (mark) show(mark)
    say(fill(labels.count, { at: index + 1, count: hits.length }))
    history.replaceState(history.state, '', anchor)
  }

  function setOpen(on: boolean): void {
    view.refit(() => {
      panel?.toggleAttribute('hidden', !on)
      open?.setAttribute('aria-expanded', String(on))
    })
    if (!on) {
      input.value = ''
      keys.close()
    }
    void find()
    if (!on && readFindAnchor(location.hash)) history.replaceState(history.state, '', location.pathname + location.search)
  }

  let pointer = ''
  open.addEventListener('pointerdown', ({ pointerType }) => {
    pointer = pointerType
  })
  open.addEventListener('click', () => {
    setOpen(Boolean(panel.hidden))
    if (panel.hidden) return
    keys.openFor(pointer)
    input.focus({ preventScroll: true })
  })
  required(panel, '[data-find-close]').addEventListener('click', () => setOpen(false))
  input.addEventListener('input', () => void find())
  input.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return
    event.preventDefault()
    setOpen(false)
  })
  form.addEventListener('submit', async (event) => {
    event.preventDefault()
    keys.close()
    await find()
    const onThisSheet = hits.findIndex((hit) => hit.sheet === here)
    goTo(Math.max(0, onThisSheet))
  })
  for (const step of steps)
    step.addEventListener('click', () => {
      const by = Number(step.dataset.findStep)
      const from = at ?? (by > 0 ? hits.findIndex((hit) => hit.sheet >= here) - 1 : 0)
      goTo((from + by + hits.length) % hits.length)
    })

  const follow = async () => {
    const asked = readFindAnchor(location.hash)
    if (!asked) return
    setOpen(true)
    input.value = asked.query
    await find()
    if (asked.at !== undefined) goTo(Math.min(asked.at, hits.length - 1))
  }
  addEventListener('hashchange', () => void follow())
  addEventListener('load', () => setTimeout(follow))
}
