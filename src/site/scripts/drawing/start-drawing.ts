import { load, save } from '../store.ts'
import { type SheetView, sheetView } from './sheet-view.ts'
import { startGestures } from './start-gestures.ts'

/** Set while a sheet is left for another one of its drawing; from disk a page is not told where it was reached from. */
const turning = 'fettle.sheet'
const stepPx = 90
const zoomStep = 1.6
/** Between the sheet and the rail. */
const marginPx = 10
const leastHeightPx = 200

export interface OpenedDrawing {
  sheet: HTMLElement
  tools: HTMLElement
  drawing: HTMLElement
  view: SheetView
  isFull(): boolean
  /** Brings a part of the sheet into view, and the sheet onto the screen. */
  show(part: Element): void
  /** The page is left for another sheet of this drawing, which opens as this one is. */
  turn(): void
}

/** Wakes the sheet of a page: its buttons, keys and gestures, and the mark that the address names. */
export function startDrawing(sheet: HTMLElement): OpenedDrawing | undefined {
  const drawing = sheet.querySelector<HTMLElement>('[data-sheet-drawing]')
  const area = sheet.querySelector<HTMLElement>('[data-sheet-window]')
  const tools = sheet.querySelector<HTMLElement>('[data-sheet-tools]')
  const full = sheet.querySelector<HTMLButtonElement>('[data-full]')
  if (!drawing || !area || !tools || !full) return undefined
  tools.hidden = false
  area.tabIndex = 0
  const isFull = () => sheet.classList.contains('full')
  const view = sheetView(area, drawing, () => {
    if (isFull()) return area.clientHeight
    const rail = document.querySelector<HTMLElement>('.rail')?.offsetHeight ?? 0
    const above = area.getBoundingClientRect().top - sheet.getBoundingClientRect().top
    return sheet.dataset.sheet === 'width' ? undefined : Math.max(leastHeightPx, innerHeight - rail - above - marginPx)
  })

  const open = full.textContent
  const setFull = (on: boolean) => {
    view.refit(() => {
      sheet.classList.toggle('full', on)
      document.documentElement.classList.toggle('with-full', on)
      full.textContent = (on ? full.dataset.close : open) ?? ''
    })
  }
  const turn = () => {
    if (isFull()) save(turning, 'full', 'sessionStorage')
  }
  const show = (part: Element) => {
    view.showPart(part)
    if (!isFull()) sheet.scrollIntoView({ block: 'start' })
  }

  full.addEventListener('click', () => setFull(!isFull()))
  sheet.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element)) return
    if (target.closest('[data-sheet-turn]')) turn()
    const wish = target.closest<HTMLElement>('[data-zoom]')?.dataset.zoom
    if (wish === 'in') view.zoomBy(zoomStep)
    else if (wish === 'out') view.zoomBy(1 / zoomStep)
    else if (wish === 'fit') view.whole()
  })
  document.addEventListener('keydown', (event) => {
    if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey || isTyped(event.target)) return
    if (event.key === 'Escape' && isFull()) setFull(false)
    else if (event.key === '+' || event.key === '=') view.zoomBy(zoomStep)
    else if (event.key === '-') view.zoomBy(1 / zoomStep)
    else if (event.key === '0') view.whole()
    else {
      const way = ways[event.key]
      if (!way || !(isFull() || area.contains(document.activeElement))) return
      view.move(way[0] * stepPx, way[1] * stepPx)
    }
    event.preventDefault()
  })
  startGestures(area, view, () => isFull() || view.zoom() > 1)

  const toMark = () => {
    const mark = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null
    if (mark instanceof SVGElement && drawing.contains(mark)) show(mark.querySelector('rect') ?? mark)
  }
  addEventListener('hashchange', toMark)
  // Before the fonts are there the buttons may take more lines.
  for (const event of ['resize', 'load']) addEventListener(event, () => view.refit())
  // Turning to the next sheet stays in full screen.
  setFull(load(turning, 'sessionStorage') !== undefined)
  save(turning, undefined, 'sessionStorage')
  // After the browser has gone to the mark by itself, so that the whole sheet is in view and not its middle.
  addEventListener('load', () => setTimeout(toMark))
  return { sheet, tools, drawing, view, isFull, show, turn }
}

const ways: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }

const isTyped = (target: EventTarget | null) => target instanceof Element && target.closest('input, select, textarea') !== null
