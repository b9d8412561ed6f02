import type { Device } from '../../model/machine.ts'
import { slug } from '../address.ts'

/** Path of a sheet's SVG file in the site. */
export function sheetFile(drawing: string, sheet: number): string {
  return `sheets/${slug(drawing)}.${sheet}.svg`
}

/** Where a device is on the plan, in the plan's units. */
export function positionOf({ x, y }: Device): { x: number; y: number } | undefined {
  return x && y ? { x: x.value, y: y.value } : undefined
}
