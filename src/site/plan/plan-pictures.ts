import { boundsOf, grown, type Rect } from './geometry.ts'
import { type PlanPicture, type PlanSize, placeLabels } from './place-labels.ts'
import type { PlanSizes } from './plan-sizes.ts'
import { type DeviceAt, type NumberedSpot, spotsOf } from './spots-of.ts'

/** The same devices for a panel, a small panel, and a phone or paper. */
export interface PlanPictures {
  wide: PlanPicture<NumberedSpot>
  middle: PlanPicture<NumberedSpot>
  /** With numbers in place of tags. */
  narrow: PlanPicture<NumberedSpot>
  /** Whether tags fit nowhere, and `wide` and `middle` have numbers too. */
  numbersOnly: boolean
  /** The device of each number, from 1. */
  tags: readonly string[]
}

/** More spots than this fit nowhere. */
const mostSpots = 60

/** Lays out the devices of an area. `outline` is the area, where the plan has its outline. Undefined where nothing has a place. */
export function planPictures(
  devices: readonly DeviceAt[],
  outline: Rect | undefined,
  sheet: Rect,
  { wide, middle, narrow }: PlanSizes,
): PlanPictures | undefined {
  const bounds = boundsOf([...devices, ...(outline ? [outline] : [])])
  if (!bounds) return undefined
  // A single device without an area still has some of the machine round it.
  const focus = grown(bounds, Math.max(bounds.width, bounds.height, sheet.width / 8) * 0.055)
  for (let most = Math.min(devices.length, mostSpots); ; most = Math.floor(most * 0.85)) {
    const spots = spotsOf(devices, most)
    const numbered = (size: PlanSize) => placeLabels(spots, focus, sheet, size)
    const small = numbered(narrow)
    if (!small) {
      if (most <= 1) return undefined
      continue
    }
    const isSingle = spots.every(({ tags }) => tags.length === 1)
    const tagged = (size: PlanSize) =>
      isSingle
        ? placeLabels(
            spots.map((spot) => ({ ...spot, text: spot.tags[0] ?? spot.text })),
            focus,
            sheet,
            size,
          )
        : undefined
    const [tagsWide, tagsMiddle] = [tagged(wide), tagged(middle)]
    const [large, medium] = [tagsWide ?? numbered(wide), tagsMiddle ?? numbered(middle)]
    if (large && medium)
      return { wide: large, middle: medium, narrow: small, numbersOnly: !tagsWide || !tagsMiddle, tags: spots.flatMap(({ tags }) => tags) }
    if (most <= 1) return undefined
  }
}
