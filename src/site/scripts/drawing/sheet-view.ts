/** Where a finger or the mouse is, in px of the screen. */
export interface Spot {
  x: number
  y: number
}

/** What of a sheet is in view: the sheet is laid out as large as it is wanted, and its window scrolls over it. */
export interface SheetView {
  /** 1 where the whole sheet is shown. */
  zoom(): number
  /** Enlarges by a factor; the point of the sheet at `at`, or in the middle of the window, stays where it is. */
  zoomBy(factor: number, at?: Spot): void
  /** Shows the sheet larger at once while two fingers move; `settle` lays it out so. */
  stretch(factor: number, at: Spot): void
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
/** What a mark on a sheet should be high at least to be read. */
const readablePx = 30
/** How much a sheet is enlarged round a mark at least, and at most. */
const markZoom = { least: 1.6, most: 6 }

/** The browser scrolls, so that a finger moves a sheet of any size without a script. `mostHeightPx` is the room for the whole sheet; without it the sheet is as wide as its window. */
export function sheetView(area: HTMLElement, drawing: HTMLElement, mostHeightPx: () => number | undefined): SheetView {
  let zoom = 1
  let stretched: { factor: number; at: Spot } | undefined

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
  }

  function zoomBy(factor: number, at = middleOf(area)): void {
    const share = shareAt(at)
    zoom = Math.min(mostZoom, Math.max(1, zoom * factor))
    layOut()
    bring(share, at)
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
    zoom: () => zoom,
    zoomBy,
    stretch(factor, at) {
      if (!stretched) {
        const { left, top } = drawing.getBoundingClientRect()
        drawing.style.transformOrigin = `${at.x - left}px ${at.y - top}px`
        drawing.style.willChange = 'transform'
      }
      const { factor: now, at: from } = stretched ?? { factor: 1, at }
      stretched = { factor: Math.min(mostZoom / zoom, Math.max(1 / zoom, now * factor)), at: from }
      drawing.style.transform = `scale(${stretched.factor})`
    },
    settle() {
      if (!stretched) return
      const { factor, at } = stretched
      stretched = undefined
      drawing.style.transform = ''
      drawing.style.willChange = ''
      zoomBy(factor, at)
    },
    whole() {
      zoom = 1
      layOut()
    },
    move(x, y) {
      area.scrollLeft -= x
      area.scrollTop -= y
    },
    showPart(part) {
      const small = part.getBoundingClientRect().height / zoom
      const wished = Math.min(markZoom.most, Math.max(markZoom.least, readablePx / Math.max(1, small)))
      zoomBy(wished / zoom)
      const [to, from] = [middleOf(area), middleOf(part)]
      area.scrollLeft += from.x - to.x
      area.scrollTop += from.y - to.y
    },
    refit(change) {
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
