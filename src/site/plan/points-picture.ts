import { boundsOf, grown, type Rect } from './geometry.ts'
import { type PlanPicture, type PlanSize, placeLabels, type Spot } from './place-labels.ts'

/** For half the width of a sheet of paper: letters of 10 pt, and no more height than it takes. */
const onPaper: PlanSize = { width: 356, tallest: 176, utmost: 420, fontSizePx: 13, labelHeightPx: 19 }

/**
 * Isolation points on the plan, each with its number. As much of the machine is shown as holds them all, and at least a third
 * of its width, so that a reader knows where he stands. Undefined without a point, or where the labels do not fit.
 */
export function pointsPicture(points: readonly Spot[], sheet: Rect): PlanPicture<Spot> | undefined {
  const bounds = boundsOf(points)
  if (!bounds) return undefined
  const least = sheet.width / 3
  const focus = grown(bounds, Math.max(sheet.width * 0.06, (least - bounds.width) / 2))
  return placeLabels(points, focus, sheet, onPaper)
}
