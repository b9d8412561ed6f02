import type { Spot } from './place-labels.ts'

/** A device on the plan, in the units of the plan. */
export interface DeviceAt {
  tag: string
  x: number
  y: number
}

/** Devices that share a mark: one, or several that stand too close together. */
export interface NumberedSpot extends Spot {
  tags: readonly string[]
  /** The number of the first of them; the others follow. */
  first: number
}

/** How much farther devices may stand apart to share a mark, from one try to the next. */
const growth = 1.4

/** Numbers devices in their order from 1. There are at most `most` spots: devices that stand close together share one, with the numbers that it has. */
export function spotsOf(devices: readonly DeviceAt[], most: number): NumberedSpot[] {
  let spots: { at: DeviceAt; tags: string[] }[] = devices.map((at) => ({ at, tags: [at.tag] }))
  for (let reach = 1; spots.length > Math.max(1, most); reach *= growth) {
    spots = []
    for (const device of devices) {
      const near = spots.find(({ at }) => Math.hypot(at.x - device.x, at.y - device.y) < reach)
      if (near) near.tags.push(device.tag)
      else spots.push({ at: device, tags: [device.tag] })
    }
  }
  let number = 1
  return spots.map(({ at: { x, y }, tags }) => {
    const first = number
    number += tags.length
    return { x, y, tags, first, text: tags.length === 1 ? String(first) : `${first}–${number - 1}` }
  })
}
