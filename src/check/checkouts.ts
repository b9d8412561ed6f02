import { type Checkout, checkoutOf } from '../checkout/checkout-of.ts'
import { type Wired, wire } from '../checkout/wiring.ts'
import type { Graph } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'

export interface DeviceCheckout {
  device: Device
  checkout: Checkout
  /** One for each signal of the I/O list. */
  wired: readonly Wired[]
}

/** What every device should read; none where the machine has no checkout.yaml. For `graph.made`. */
export function checkouts(machine: Machine, graph: Graph): readonly DeviceCheckout[] {
  if (!machine.checkout) return []
  return machine.devices.flatMap((device): DeviceCheckout[] => {
    const checkout = checkoutOf(device, machine, graph)
    return checkout ? [{ device, checkout, wired: graph.signalsOf(device.tag.value).map((signal) => wire(device, signal, machine)) }] : []
  })
}

/** A number for a message: four figures, no exponent. */
export const figure = (value: number): string => String(Number(value.toPrecision(4)))
