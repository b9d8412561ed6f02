import type { Graph } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'
import { type Prose, standIn } from '../model/prose/prose.ts'

/** A device that a text names, bare or by an element, at its offsets in the text. */
export interface NamedDevice {
  device: Device
  start: number
  end: number
}

interface NamingProse {
  prose: Prose
  named: readonly NamedDevice[]
}

/** Every text that names devices of this unit, with the devices in the order of the text. */
export const namedDevices = (graph: Graph): readonly NamingProse[] => graph.made(findNamed)

function findNamed(machine: Machine): NamingProse[] {
  const devices = new Map(machine.devices.map((device) => [device.tag.value, device]))
  const bare = Map.groupBy(machine.bareTags(), ({ prose }) => prose)
  return machine.prose().flatMap((prose) => {
    if (prose.elements.length === 0 && !bare.has(prose)) return []
    const named = [
      ...prose.elements.map(({ tag, at }) => ({ tag, start: at, end: at + standIn.length })),
      ...(bare.get(prose) ?? []).map(({ mention: { tag, start, end } }) => ({ tag, start, end })),
    ].flatMap(({ tag, start, end }) => {
      const device = tag === undefined ? undefined : devices.get(tag)
      return device ? [{ device, start, end }] : []
    })
    return named.length > 0 ? [{ prose, named: named.sort((a, b) => a.start - b.start) }] : []
  })
}
