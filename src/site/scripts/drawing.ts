import { load, save } from './store.ts'

/** Set while a sheet is left for another one of its drawing; from disk a page is not told where it was reached from. */
const turning = 'fettle.sheet'

/** The part of a sheet that is in view, in the units of its viewBox. */
interface View {
  x: number
  y: number
  width: number
  height: number
}

/** Zoom by buttons, wheel and pinch; pan by finger. The page itself captures touch only in full screen. */
export function startDrawings(): void {
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-sheet]')) startSheet(sheet)
}

function startSheet(sheet: HTMLElement): void {
  const found = sheet.querySelector<SVGSVGElement>('[data-sheet-drawing]')
  const area = sheet.querySelector<HTMLElement>('[data-sheet-window]')
  const tools = sheet.querySelector<HTMLElement>('[data-sheet-tools]')
  const full = sheet.querySelector<HTMLButtonElement>('[data-full]')
  if (!found || !area || !tools || !full) return
  const drawing = found
  tools.hidden = false
  const base = drawing.viewBox.baseVal
  const whole: View = { x: base.x, y: base.y, width: base.width, height: base.height }
  let view = { ...whole }
  const show = (next: View) => {
    const width = Math.min(whole.width, Math.max(whole.width / 12, next.width))
    const height = (width * whole.height) / whole.width
    view = { width, height, x: clamp(next.x, whole.x, whole.x + whole.width - width), y: clamp(next.y, whole.y, whole.y + whole.height - height) }
    drawing.setAttribute('viewBox', `${view.x} ${view.y} ${view.width} ${view.height}`)
  }
  const zoom = (factor: number, at = { x: view.x + view.width / 2, y: view.y + view.height / 2 }) =>
    show({ x: at.x - (at.x - view.x) / factor, y: at.y - (at.y - view.y) / factor, width: view.width / factor, height: view.height / factor })
  const pointAt = (clientX: number, clientY: number) => {
    const matrix = drawing.getScreenCTM()
    return matrix ? new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse()) : { x: 0, y: 0 }
  }

  const setFull = (on: boolean) => {
    sheet.classList.toggle('full', on)
    full.textContent = (on ? full.dataset.close : full.dataset.open) ?? ''
  }
  full.dataset.open = full.textContent ?? ''
  full.addEventListener('click', () => setFull(!sheet.classList.contains('full')))
  document.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && sheet.classList.contains('full')) setFull(false)
  })
  tools.addEventListener('click', ({ target }) => {
    const wish = target instanceof HTMLElement ? target.dataset.zoom : undefined
    if (target instanceof Element && target.closest('[data-sheet-turn]') && sheet.classList.contains('full')) save(turning, 'full', 'sessionStorage')
    if (wish === 'in') zoom(1.6)
    else if (wish === 'out') zoom(1 / 1.6)
    else if (wish === 'fit') show(whole)
  })
  // Turning to the next sheet stays in full screen.
  if (load(turning, 'sessionStorage') !== undefined) setFull(true)
  save(turning, undefined, 'sessionStorage')

  const toMark = () => {
    const mark = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null
    if (!(mark instanceof SVGGraphicsElement) || !drawing.contains(mark)) return
    const box = mark.getBBox()
    show({
      x: box.x + box.width / 2 - whole.width / 4,
      y: box.y + box.height / 2 - whole.height / 4,
      width: whole.width / 2,
      height: whole.height / 2,
    })
    sheet.scrollIntoView({ block: 'start' })
  }
  addEventListener('hashchange', toMark)
  // After the browser has gone to the mark by itself, so that the whole sheet is in view and not its middle.
  addEventListener('load', () => setTimeout(toMark))
  startTouch(
    area,
    () => sheet.classList.contains('full') || view.width < whole.width,
    (from, to) => {
      const before = pointAt(from.x, from.y)
      const after = pointAt(to.x, to.y)
      show({ ...view, x: view.x - (after.x - before.x), y: view.y - (after.y - before.y) })
    },
    (factor, at) => zoom(factor, pointAt(at.x, at.y)),
  )
}

interface Spot {
  x: number
  y: number
}

/** One finger or the mouse pans, two fingers or the wheel zoom. A touch that did not move is still a touch on a link. */
function startTouch(area: HTMLElement, active: () => boolean, pan: (from: Spot, to: Spot) => void, zoom: (factor: number, at: Spot) => void): void {
  const fingers = new Map<number, Spot>()
  let moved = 0
  area.addEventListener('pointerdown', (event) => {
    if (!active()) return
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY })
    moved = 0
  })
  area.addEventListener('pointermove', (event) => {
    const from = fingers.get(event.pointerId)
    if (!from) return
    const to = { x: event.clientX, y: event.clientY }
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1]
    if (other) {
      const factor = Math.hypot(to.x - other.x, to.y - other.y) / Math.max(1, Math.hypot(from.x - other.x, from.y - other.y))
      zoom(factor, { x: (to.x + other.x) / 2, y: (to.y + other.y) / 2 })
    } else pan(from, to)
    moved += Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
    fingers.set(event.pointerId, to)
  })
  const lift = (event: PointerEvent) => fingers.delete(event.pointerId)
  area.addEventListener('pointerup', lift)
  area.addEventListener('pointercancel', lift)
  area.addEventListener('pointerleave', lift)
  area.addEventListener(
    'click',
    (event) => {
      if (moved > 12) event.preventDefault()
    },
    true,
  )
  area.addEventListener(
    'wheel',
    (event) => {
      if (!active()) return
      event.preventDefault()
      zoom(event.deltaY < 0 ? 1.2 : 1 / 1.2, { x: event.clientX, y: event.clientY })
    },
    { passive: false },
  )
}

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), Math.max(low, high))
