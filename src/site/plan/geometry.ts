export interface Point {
  x: number
  y: number
}

export interface Rect extends Point {
  width: number
  height: number
}

export const middleOf = ({ x, y, width, height }: Rect): Point => ({ x: x + width / 2, y: y + height / 2 })

/** The smallest rectangle round rectangles and points. Undefined for none. */
export function boundsOf(shapes: readonly (Point & Partial<Rect>)[]): Rect | undefined {
  if (shapes.length === 0) return undefined
  const x = Math.min(...shapes.map((it) => it.x))
  const y = Math.min(...shapes.map((it) => it.y))
  const right = Math.max(...shapes.map((it) => it.x + (it.width ?? 0)))
  const bottom = Math.max(...shapes.map((it) => it.y + (it.height ?? 0)))
  return { x, y, width: right - x, height: bottom - y }
}

/** A rectangle made larger on every side. */
export const grown = ({ x, y, width, height }: Rect, by: number): Rect => ({ x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by })

export function overlap(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/** How far a point is from a line between two points. */
export function distanceToLine({ x, y }: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = dx * dx + dy * dy
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / length))
  return Math.hypot(from.x + share * dx - x, from.y + share * dy - y)
}

/** Whether two lines cross at a point inside both. */
export function cross([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean {
  const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x))
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}
