import { type Checkout, checkoutOf } from '../checkout/checkout-of.ts'
import { type Wired, wire } from '../checkout/wiring.ts'
import type { Graph } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'
import type { Place } from '../source/place.ts'

export interface DeviceCheckout {
  device: Device
  checkout: Checkout
  /** One for each signal of the I/O list; one without a signal where it has none. */
  wired: readonly Wired[]
}

/** What every device should read; none where the machine has no checkout.yaml. For `graph.made`. */
export function checkouts(machine: Machine, graph: Graph): readonly DeviceCheckout[] {
  if (!machine.checkout) return []
  return machine.devices.flatMap((device): DeviceCheckout[] => {
    const checkout = checkoutOf(device, machine, graph)
    if (!checkout) return []
    const signals = graph.signalsOf(device.tag.value)
    return [{ device, checkout, wired: (signals.length > 0 ? signals : [undefined]).map((signal) => wire(device, signal, machine)) }]
  })
}

/** A number for a message: four figures, no exponent. */
export const figure = (value: number): string => String(Number(value.toPrecision(4)))

/** True the first time that these places come. Devices of one part share a value: it is said once. */
export function oncePerPlace(): (...places: readonly (Place | undefined)[]) => boolean {
  const seen = new Set<string>()
  return (...places) => {
    const key = places.map((place) => `${place?.file}:${place?.line}:${place?.column}`).join(' ')
    if (seen.has(key)) return false
    seen.add(key)
    return true
  }
}
