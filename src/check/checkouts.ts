import { type Checkout, checkoutOf } from '../checkout/checkout-of.ts'
import { type Wired, wire } from '../checkout/wiring.ts'
import type { Graph } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'

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
