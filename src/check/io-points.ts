import type { Machine, Signal } from '../model/machine.ts'
import { comparePlaces } from '../source/place.ts'

/** Every row of the I/O list that takes an address and a channel: signals of devices and spare channels, in the order of the list. */
export function ioPoints({ signals, spares }: Machine): Signal[] {
  return spares.length === 0 ? [...signals] : [...signals, ...spares].sort((a, b) => comparePlaces(a.place, b.place))
}
