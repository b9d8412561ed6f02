import { type Panel, panelSizes } from '../../panel/panel-sizes.ts'
import type { PlanSize } from './place-labels.ts'

export interface PlanSizes {
  wide: PlanSize
  middle: PlanSize
  narrow: PlanSize
}

/** A plan of this height fits no page, but with it labels for gloved hands fit the plan. */
const utmost = 640

/** Widths of the plan in px on pages that are 1024, 800 and 390 px wide. Labels are touched; numbers are two or three letters wide. */
const usual: PlanSizes = {
  wide: { width: 984, tallest: 532, utmost, fontSizePx: 18, labelHeightPx: 44 },
  middle: { width: 772, tallest: 500, utmost, fontSizePx: 18, labelHeightPx: 44 },
  narrow: { width: 362, tallest: 460, utmost, fontSizePx: 16, labelHeightPx: 34 },
}

/** Pages are no wider than this, with a margin on each side. As in base.css and plan.css. */
const [widestPagePx, marginPx, middleUpToPx] = [1240, 20, 900]

/** The sizes of plans, with labels as large as the machine's own screen needs them: the letters of its text, and targets for its hands. */
export function planSizes(panel: Panel | undefined): PlanSizes {
  if (!panel) return usual
  const { rootPx, smallestShare, targetPx } = panelSizes(panel)
  const shown = panel.widthPx > middleUpToPx ? 'wide' : 'middle'
  const size = usual[shown]
  const scale = (Math.min(panel.widthPx, widestPagePx) - 2 * marginPx) / size.width
  const labelHeightPx = Math.max(size.labelHeightPx, Math.ceil(targetPx / scale))
  return {
    ...usual,
    [shown]: {
      ...size,
      fontSizePx: Math.max(size.fontSizePx, Math.ceil((rootPx * smallestShare) / scale)),
      labelHeightPx,
    },
  }
}
