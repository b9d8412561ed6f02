import { boundsOf, grown, middleOf, overlap, type Point, type Rect } from './geometry.ts'
import { labelWidthPx, within } from './place-labels.ts'
import type { DeviceAt } from './spots-of.ts'

/** One device on the plan, in px of a picture. */
export interface DevicePicture {
  width: number
  height: number
  map: Rect
  /** The part of the plan that is shown, in its units. */
  view: Rect
  mark: Point
  /** Its label, and where the leader from the mark meets it. */
  box: Rect
  port: Point
  /** The whole plan in a corner, and the device there. */
  inset: Rect
  insetMark: Point
}

const [width, height] = [484, 300]
const labelHeightPx = 34
const fontSizePx = 18
/** From the mark to its label, so that the crosshair stays free. */
const awayPx = 44
/** Share of the width that the whole plan takes. */
const insetShare = 0.3

/** Shows a device with its area round it. The label and the small plan lie where the device is not. */
export function devicePicture({ tag, ...at }: DeviceAt, outline: Rect | undefined, sheet: Rect): DevicePicture {
  const near = grown({ ...at, width: 0, height: 0 }, sheet.width / 10)
  const bounds = boundsOf(outline ? [outline, at] : [near]) ?? near
  const focus = grown(bounds, Math.max(bounds.width, bounds.height) * 0.06)
  const scale = Math.min(width / focus.width, height / focus.height)
  const view = within(sheet, middleOf(focus), width / scale, height / scale)
  const mark = round({ x: (at.x - view.x) * scale, y: (at.y - view.y) * scale })
  const boxWidth = labelWidthPx([tag], fontSizePx)
  const isLeft = mark.x < width / 2
  const isHigh = mark.y < height / 2
  const box = {
    x: Math.min(Math.max(isLeft ? mark.x + awayPx : mark.x - awayPx - boxWidth, 4), width - boxWidth - 4),
    y: Math.min(Math.max(isHigh ? mark.y + awayPx / 2 : mark.y - awayPx / 2 - labelHeightPx, 4), height - labelHeightPx - 4),
    width: boxWidth,
    height: labelHeightPx,
  }
  const insetWidth = Math.round(width * insetShare)
  const insetHeight = Math.round((insetWidth * sheet.height) / sheet.width)
  const corners = [!isLeft, isLeft].flatMap((left) =>
    [!isHigh, isHigh].map((top) => ({ x: left ? 0 : width - insetWidth, y: top ? 0 : height - insetHeight, width: insetWidth, height: insetHeight })),
  )
  const taken = [box, grown({ ...mark, width: 0, height: 0 }, 25)]
  const [corner] = corners
  const inset = corners.find((it) => !taken.some((one) => overlap(one, it))) ?? corner ?? { x: 0, y: 0, width: insetWidth, height: insetHeight }
  return {
    width,
    height,
    map: { x: 0, y: 0, width, height },
    view,
    mark,
    box,
    port: { x: isLeft ? box.x : box.x + boxWidth, y: box.y + labelHeightPx / 2 },
    inset,
    insetMark: round({
      x: inset.x + ((at.x - sheet.x) / sheet.width) * inset.width,
      y: inset.y + ((at.y - sheet.y) / sheet.height) * inset.height,
    }),
  }
}

const round = ({ x, y }: Point): Point => ({ x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10 })
