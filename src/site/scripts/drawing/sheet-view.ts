import { largePicture } from './large-picture.ts'

/** Where a finger or the mouse is, in px of the screen. */
export interface Spot {
  x: number
  y: number
}

/** What of a sheet is in view: the sheet is laid out as large as it is wanted, and its window scrolls over it. */
export interface SheetView {
  /** 1 where the whole sheet is shown. */
  zoom(): number
  /**
   * Enlarges by a factor; the point of the sheet at `at`, or in the middle of the window, stays where it is. The picture that is
   * there is stretched at once, and laid out anew when nothing more comes: a large sheet takes a slow panel a quarter of a second.
   */
  zoomBy(factor: number, at?: Spot): void
  /** Lays out what is only stretched. */
  settle(): void
  whole(): void
  /** Moves the sheet on the screen by so many px. */
  move(x: number, y: number): void
  /** Brings a part of the sheet into the middle of the window, enlarged so that it can be read. */
  showPart(part: Element): void
  /** Fits the sheet to its window, which a change gives another size. What is in the middle stays there. */
  refit(change?: () => void): void
}

const mostZoom = 12
/** So long after the last step of an enlargement the sheet is laid out. */
const restMs = 160
/** What a mark on a sheet should be high at least to be read. */
const readablePx = 30
/** How much a sheet is enlarged round a mark at least, and at most. */
const markZoom = { least: 1.6, most: 6 }

/** The browser scrolls, so that a finger moves a sheet of any size without a script. `mostHeightPx` is the room for the whole sheet; without it the sheet is as wide as its window. */
export function sheetView(area: HTMLElement, drawing: HTMLElement, mostHeightPx: () => number | undefined): SheetView {
  const showLarge = largePicture(drawing)
  let zoom = 1
  let stretched: { factor: number; at: Spot; timer: number } | undefined

  function layOut(): void {
    const { width, height } = drawing.getBoundingClientRect()
    if (height === 0) return
    const most = mostHeightPx()
    area.classList.toggle('moved', zoom > 1)
    const isFull = area.closest('.full') !== null
    const fitting = most === undefined ? area.clientWidth : Math.min(area.clientWidth, (most * width) / height)
    const border = area.offsetHeight - area.clientHeight
    area.style.height = isFull ? '' : `${Math.round((fitting * height) / width) + border}px`
    drawing.style.width = `${Math.round(fitting * zoom)}px`
    showLarge(fitting * zoom)
  }

  function zoomTo(wished: number, at = middleOf(area)): void {
    const share = shareAt(at)
    clearTimeout(stretched?.timer)
    stretched = undefined
    drawing.style.transform = ''
    zoom = Math.min(mostZoom, Math.max(1, wished))
    layOut()
    bring(share, at)
  }

  function stretch(factor: number, at: Spot): void {
    if (!stretched) {
      const { left, top } = drawing.getBoundingClientRect()
      drawing.style.transformOrigin = `${at.x - left}px ${at.y - top}px`
    }
    clearTimeout(stretched?.timer)
    const { factor: now, at: from } = stretched ?? { factor: 1, at }
    const wished = Math.min(mostZoom / zoom, Math.max(1 / zoom, now * factor))
    stretched = { factor: wished, at: from, timer: window.setTimeout(settle, restMs) }
    drawing.style.transform = `scale(${wished})`
  }

  function settle(): void {
    if (stretched) zoomTo(zoom * stretched.factor, stretched.at)
  }

  /** Where a point of the screen is on the sheet, as a share of its width and height. */
  function shareAt({ x, y }: Spot): Spot {
    const { left, top, width, height } = drawing.getBoundingClientRect()
    return { x: (x - left) / width, y: (y - top) / height }
  }

  function bring(share: Spot, to: Spot): void {
    const { left, top, width, height } = drawing.getBoundingClientRect()
    area.scrollLeft += left + share.x * width - to.x
    area.scrollTop += top + share.y * height - to.y
  }

  return {
    zoom: () => zoom * (stretched?.factor ?? 1),
    zoomBy: (factor, at = middleOf(area)) => stretch(factor, at),
    settle,
    whole: () => zoomTo(1),
    move(x, y) {
      settle()
      area.scrollLeft -= x
      area.scrollTop -= y
    },
    showPart(part) {
      settle()
      const small = part.getBoundingClientRect().height / zoom
      const wished = Math.min(markZoom.most, Math.max(markZoom.least, readablePx / Math.max(1, small)))
      zoomTo(wished)
      const [to, from] = [middleOf(area), middleOf(part)]
      area.scrollLeft += from.x - to.x
      area.scrollTop += from.y - to.y
    },
    refit(change) {
      settle()
      const share = shareAt(middleOf(area))
      change?.()
      layOut()
      bring(share, middleOf(area))
    },
  }
}

function middleOf(element: Element): Spot {
  const { left, top, width, height } = element.getBoundingClientRect()
  return { x: left + width / 2, y: top + height / 2 }
}
