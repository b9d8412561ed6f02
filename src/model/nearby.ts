import type { Graph } from './graph.ts'
import type { Device, Machine } from './machine.ts'

/**
 * The devices of the same area that stand nearest to a device on the plan, the nearest first and at one distance in
 * the order of their tags. None for a device without a place on the plan.
 */
export function nearbyDevices(device: Device, graph: Graph, most = 6): Device[] {
  const { area, x, y } = device
  if (!area || !x || !y) return []
  return (graph.made(placedByArea).get(area.value) ?? [])
    .filter(({ tag }) => tag.value !== device.tag.value)
    .map((other) => ({ other, distance: Math.hypot((other.x?.value ?? 0) - x.value, (other.y?.value ?? 0) - y.value) }))
    .sort((a, b) => a.distance - b.distance || (a.other.tag.value < b.other.tag.value ? -1 : 1))
    .slice(0, most)
    .map(({ other }) => other)
}

const placedByArea = ({ devices }: Machine): Map<string | undefined, Device[]> =>
  Map.groupBy(
    devices.filter(({ x, y }) => x && y),
    ({ area }) => area?.value,
  )
