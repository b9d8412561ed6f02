import type { Device, Machine, Sheet } from '../../model/machine.ts'
import { slug } from '../address.ts'

/** The sheet that shows the machine from above. Undefined when machine.yaml names none. */
export function planSheet(machine: Machine): Sheet | undefined {
  const { plan } = machine.file
  if (!plan) return undefined
  const drawing = machine.drawings.find(({ number }) => number.value === plan.drawing)
  return drawing?.sheetList.find(({ number }) => number === (plan.sheet ?? 1))
}

/** Path of a sheet's SVG file in the site. */
export function sheetFile(drawing: string, sheet: number): string {
  return `sheets/${slug(drawing)}.${sheet}.svg`
}

/** Where a device is on the plan, in the plan's units. */
export function positionOf({ x, y }: Device): { x: number; y: number } | undefined {
  return x && y ? { x: x.value, y: y.value } : undefined
}
