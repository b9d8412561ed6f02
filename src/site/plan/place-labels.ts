import { assignCheapest } from './assign-cheapest.ts'
import { cross, distanceToLine, middleOf, type Point, type Rect } from './geometry.ts'

/** What gets a label: one device, or several that stand too close together. In the units of the plan. */
export interface Spot extends Point {
  text: string
}

/** Sizes in px of the picture. */
export interface PlanSize {
  width: number
  /** What the picture should be high at most, and what it may be where the labels do not fit otherwise. */
  tallest: number
  utmost: number
  fontSizePx: number
  labelHeightPx: number
}

export interface PlacedLabel<S extends Spot> {
  spot: S
  box: Rect
  /** The line from the device to its label. */
  leader: readonly [Point, Point]
}

export interface PlanPicture<S extends Spot> {
  width: number
  height: number
  fontSizePx: number
  /** Where the plan stands in the picture, and the part of the plan that is shown there, in the units of the plan. */
  map: Rect
  view: Rect
  labels: readonly PlacedLabel<S>[]
}

interface Slot {
  box: Rect
  port: Point
}

interface Frame extends Omit<PlanPicture<Spot>, 'labels'> {
  slots: readonly Slot[]
}

const leastHeightPx = 150
const gapPx = 6
/** Px to a unit of the plan: its lettering, made for the whole plan, grows no further. */
const mostScale = 2.5
/** Between the plan and its labels: no leader runs along a label. */
const leadPx = 12
/** Width of a letter of the label font as a share of its size, and what a label has on both sides of its text. */
const letterWidth = 0.6
const paddingPx = 9
/** A leader that runs so close past another device could be taken for its own; it counts as so much longer. */
const closePx = 9
const detourPx = 120

/**
 * Lays out a part of the plan with labels round it. Labels stand outside of the plan and do not overlap; leaders are straight
 * and cross neither each other nor a label. `focus` is in view whole. Undefined where the labels do not fit.
 */
export function placeLabels<S extends Spot>(spots: readonly S[], focus: Rect, sheet: Rect, size: PlanSize): PlanPicture<S> | undefined {
  return placedIn(size.tallest, spots, focus, sheet, size) ?? placedIn(size.utmost, spots, focus, sheet, size)
}

function placedIn<S extends Spot>(tallest: number, spots: readonly S[], focus: Rect, sheet: Rect, size: PlanSize): PlanPicture<S> | undefined {
  const texts = spots.map(({ text }) => text)
  const labelWidth = Math.max(size.labelHeightPx, labelWidthPx(texts, size.fontSizePx))
  let best: { picture: PlanPicture<S>; score: number } | undefined
  for (const [sides, ends] of [
    [true, false],
    [false, true],
    [true, true],
  ] as const) {
    const frame = frameOf(spots.length, focus, sheet, { ...size, tallest }, labelWidth, sides, ends)
    if (!frame) continue
    const labels = labelsIn(frame, spots)
    const reach = labels.reduce((sum, { leader: [from, to] }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0) / Math.max(1, spots.length)
    const { slots: _, ...picture } = frame
    // A large plan first; of plans that are much the same, the one with short leaders.
    const score = (frame.map.width / frame.view.width) * (1 - reach / (2 * size.width))
    if (!best || score > best.score) best = { picture: { ...picture, labels }, score }
  }
  return best?.picture
}

/** What labels of one width need for the longest of some texts. */
export function labelWidthPx(texts: readonly string[], fontSizePx: number): number {
  const longest = Math.max(0, ...texts.map((text) => [...text].length))
  return Math.ceil(longest * letterWidth * fontSizePx + 2 * paddingPx)
}

/** The plan with places for labels at its left and right (`sides`), above and below (`ends`), or all round. */
function frameOf(
  count: number,
  focus: Rect,
  sheet: Rect,
  { width, tallest, fontSizePx, labelHeightPx }: PlanSize,
  labelWidth: number,
  sides: boolean,
  ends: boolean,
): Frame | undefined {
  const [left, top] = [sides ? labelWidth + leadPx : 0, ends ? labelHeightPx + leadPx : 0]
  const mapWidth = width - 2 * left
  if (mapWidth < width / 3) return undefined
  const across = ends ? Math.floor((mapWidth + gapPx) / (labelWidth + gapPx)) : 0
  const rows = sides ? Math.max(0, Math.ceil((count - 2 * across) / 2)) : 0
  if (!sides && count > 2 * across) return undefined
  const least = Math.max(leastHeightPx, rows * (labelHeightPx + gapPx) - gapPx)
  const most = tallest - 2 * top
  if (least > most) return undefined
  const mapHeight = Math.round(Math.min(most, Math.max(least, (mapWidth * focus.height) / focus.width)))
  const scale = Math.min(mapWidth / focus.width, mapHeight / focus.height, mostScale)
  const map = { x: left, y: top, width: mapWidth, height: mapHeight }
  const view = within(sheet, middleOf(focus), mapWidth / scale, mapHeight / scale)
  const down = sides ? Math.floor((mapHeight + gapPx) / (labelHeightPx + gapPx)) : 0
  const slots = [
    ...spread(down, map.y, mapHeight).flatMap((y): Slot[] => [
      { box: { x: 0, y: y - labelHeightPx / 2, width: labelWidth, height: labelHeightPx }, port: { x: labelWidth, y } },
      { box: { x: width - labelWidth, y: y - labelHeightPx / 2, width: labelWidth, height: labelHeightPx }, port: { x: width - labelWidth, y } },
    ]),
    ...spread(across, map.x, mapWidth).flatMap((x): Slot[] => {
      const bottom = map.y + mapHeight + leadPx
      return [
        { box: { x: x - labelWidth / 2, y: 0, width: labelWidth, height: labelHeightPx }, port: { x, y: labelHeightPx } },
        { box: { x: x - labelWidth / 2, y: bottom, width: labelWidth, height: labelHeightPx }, port: { x, y: bottom } },
      ]
    }),
  ]
  return { width, height: mapHeight + 2 * top, fontSizePx, map, view, slots }
}

/** The middles of equal fields along a stretch. */
const spread = (count: number, from: number, length: number) => Array.from({ length: count }, (_, index) => from + (length * (index + 0.5)) / count)

/** A window of this size round a point, moved so that it lies on the sheet as far as it can. */
export function within(sheet: Rect, { x, y }: Point, width: number, height: number): Rect {
  const place = (middle: number, size: number, start: number, whole: number) =>
    size >= whole ? start + (whole - size) / 2 : Math.min(Math.max(middle - size / 2, start), start + whole - size)
  return { x: place(x, width, sheet.x, sheet.width), y: place(y, height, sheet.y, sheet.height), width, height }
}

function labelsIn<S extends Spot>({ map, view, slots }: Frame, spots: readonly S[]): PlacedLabel<S>[] {
  const scale = map.width / view.width
  const marks = spots.map(({ x, y }) => ({ x: map.x + (x - view.x) * scale, y: map.y + (y - view.y) * scale }))
  const lengths = marks.map((mark) => slots.map(({ port }) => Math.hypot(port.x - mark.x, port.y - mark.y)))
  const clear = marks.map((mark, row) => slots.map(({ port }, column) => (lengths[row]?.[column] ?? 0) + detourPx * passed(mark, port, marks)))
  const labelsBy = (costs: readonly (readonly number[])[]) =>
    assignCheapest(costs).flatMap((column, row): PlacedLabel<S>[] => {
      const [spot, mark, slot] = [spots[row], marks[row], slots[column]]
      return spot && mark && slot ? [{ spot, box: slot.box, leader: [mark, slot.port] }] : []
    })
  const preferred = labelsBy(clear)
  // The least sum of lengths alone never crosses.
  return anyCross(preferred.map(({ leader }) => leader)) ? labelsBy(lengths) : preferred
}

/** How many other devices a leader runs past closely. */
const passed = (from: Point, to: Point, marks: readonly Point[]) =>
  marks.filter((it) => Math.hypot(it.x - from.x, it.y - from.y) > 1 && distanceToLine(it, from, to) < closePx).length

const anyCross = (leaders: readonly (readonly [Point, Point])[]) =>
  leaders.some((one, index) => leaders.slice(index + 1).some((other) => cross(one, other)))
