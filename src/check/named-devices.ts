import type { Device, Machine } from '../model/machine.ts'
import { type Prose, standIn } from '../model/prose/prose.ts'

/** A device that a text names, bare or by an element, at its offsets in the text. */
export interface NamedDevice {
  device: Device
  start: number
  end: number
}

/** Every text that names devices of this unit, with the devices in the order of the text. */
export function* namedDevices(machine: Machine): Iterable<{ prose: Prose; named: readonly NamedDevice[] }> {
  const devices = new Map(machine.devices.map((device) => [device.tag.value, device]))
  const bare = Map.groupBy(machine.bareTags(), ({ prose }) => prose)
  for (const prose of machine.prose()) {
    const named = [
      ...prose.elements.map(({ tag, at }) => ({ tag, start: at, end: at + standIn.length })),
      ...(bare.get(prose) ?? []).map(({ mention: { tag, start, end } }) => ({ tag, start, end })),
    ].flatMap(({ tag, start, end }) => {
      const device = tag === undefined ? undefined : devices.get(tag)
      return device ? [{ device, start, end }] : []
    })
    if (named.length > 0) yield { prose, named: named.sort((a, b) => a.start - b.start) }
  }
}
