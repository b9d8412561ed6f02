import type { SheetView, Spot } from './sheet-view.ts'

/** Moved so far, a press of the mouse was no click. Some panels pass a finger off as a mouse. */
const clickPx = 8

/** The mouse moves the sheet, two fingers and the wheel enlarge it. One finger scrolls by itself. */
export function startGestures(area: HTMLElement, view: SheetView, takesWheel: () => boolean): void {
  startMouse(area, view)
  startPinch(area, view)
  // A finger moves what is laid out.
  area.addEventListener('pointerdown', () => view.settle())
  area.addEventListener(
    'wheel',
    (event) => {
      if (!takesWheel()) return
      event.preventDefault()
      view.zoomBy(event.deltaY < 0 ? 1.2 : 1 / 1.2, { x: event.clientX, y: event.clientY })
    },
    { passive: false },
  )
}

function startMouse(area: HTMLElement, view: SheetView): void {
  let from: Spot | undefined
  let moved = 0
  area.addEventListener('pointerdown', ({ pointerType, button, clientX, clientY }) => {
    moved = 0
    if (pointerType === 'mouse' && button === 0) from = { x: clientX, y: clientY }
  })
  addEventListener('pointermove', ({ clientX, clientY }) => {
    if (!from) return
    view.move(clientX - from.x, clientY - from.y)
    moved += Math.abs(clientX - from.x) + Math.abs(clientY - from.y)
    from = { x: clientX, y: clientY }
  })
  for (const end of ['pointerup', 'pointercancel'] as const)
    addEventListener(end, () => {
      from = undefined
    })
  area.addEventListener('dragstart', (event) => event.preventDefault())
  area.addEventListener(
    'click',
    (event) => {
      if (moved > clickPx) event.preventDefault()
    },
    true,
  )
}

function startPinch(area: HTMLElement, view: SheetView): void {
  let apart: number | undefined
  const pinch = (event: TouchEvent) => {
    event.preventDefault()
    const { distance, middle } = spanOf(event)
    if (apart !== undefined) view.zoomBy(distance / apart, middle)
    apart = distance
  }
  area.addEventListener(
    'touchstart',
    (event) => {
      if (event.touches.length !== 2) return
      event.preventDefault()
      apart = spanOf(event).distance
      area.addEventListener('touchmove', pinch, { passive: false })
    },
    { passive: false },
  )
  const end = ({ touches }: TouchEvent) => {
    if (apart === undefined || touches.length > 1) return
    apart = undefined
    area.removeEventListener('touchmove', pinch)
    view.settle()
  }
  area.addEventListener('touchend', end)
  area.addEventListener('touchcancel', end)
}

function spanOf({ touches }: TouchEvent): { distance: number; middle: Spot } {
  const [a, b] = [touches[0], touches[1]]
  if (!a || !b) return { distance: 1, middle: { x: 0, y: 0 } }
  return {
    distance: Math.max(1, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
    middle: { x: (a.clientX + b.clientX) / 2, y: (a.clientY + b.clientY) / 2 },
  }
}
