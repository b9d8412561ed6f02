import type { Area, Device, Machine } from '../../model/machine.ts'
import { panelOf } from '../../model/panel.ts'
import { planSheet } from '../../model/plan-sheet.ts'
import { slug } from '../address.ts'
import type { Rect } from '../plan/geometry.ts'
import { type PlanPictures, planPictures } from '../plan/plan-pictures.ts'
import { planSizes } from '../plan/plan-sizes.ts'

/** Path of a sheet's SVG file in the site. */
export function sheetFile(drawing: string, sheet: number): string {
  return `sheets/${slug(drawing)}.${sheet}.svg`
}

/** Path of the small picture of a sheet that is a page of a PDF. */
export function smallSheetFile(drawing: string, sheet: number): string {
  return sheetFile(drawing, sheet).replace(/svg$/, 'small.webp')
}

/** Where a device is on the plan, in the plan's units. */
export function positionOf({ x, y }: Device): { x: number; y: number } | undefined {
  return x && y ? { x: x.value, y: y.value } : undefined
}

/** Devices of an area in the order of their list, with those that name no area and stand in its outline. */
export function devicesIn({ devices, areas }: Machine, area: Area): Device[] {
  return devices.filter((device) => (device.area ? device.area.value === area.id.value : areas.find((it) => holds(it, device)) === area))
}

/** Devices on the plan that no area has. */
export function devicesInNoArea({ devices, areas }: Machine): Device[] {
  return devices.filter((device) => !device.area && positionOf(device) && !areas.some((it) => holds(it, device)))
}

function holds({ outline }: Area, device: Device): boolean {
  const at = positionOf(device)
  const rect = outline && rectOf(outline)
  return at !== undefined && rect !== undefined && at.x >= rect.x && at.x <= rect.x + rect.width && at.y >= rect.y && at.y <= rect.y + rect.height
}

/** The plan of an area with its devices. Undefined where there is no plan, or nothing on it. */
export function picturesOf(machine: Machine, area: Area, devices: readonly Device[]): PlanPictures | undefined {
  const sheet = planSheet(machine)
  const placed = devices.flatMap((device) => {
    const at = positionOf(device)
    return at ? [{ tag: device.tag.value, ...at }] : []
  })
  return sheet && planPictures(placed, area.outline && rectOf(area.outline), sheet.viewBox, planSizes(panelOf(machine.file)))
}

export const rectOf = ([x, y, width, height]: NonNullable<Area['outline']>): Rect => ({ x, y, width, height })
