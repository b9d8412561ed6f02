import { expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { graphOf } from '../../src/model/graph.ts'
import type { Device } from '../../src/model/machine.ts'
import { nearbyDevices } from '../../src/model/nearby.ts'

const [machine] = loadMachine(diskFolder('example-machine', ''), diskFolder('content', 'content/')).machines
if (!machine) throw new Error('the example does not load')
const graph = graphOf(machine)

const between = (a: Device, b: Device) => {
  if (!a.x || !a.y || !b.x || !b.y) return Number.POSITIVE_INFINITY
  return Math.hypot(a.x.value - b.x.value, a.y.value - b.y.value)
}

test('the nearest devices of the area come first, and none that is left out is nearer', () => {
  const placed = machine.devices.filter(({ area, x, y }) => area && x && y)
  expect(placed.length).toBeGreaterThan(80)
  for (const device of placed) {
    const near = nearbyDevices(device, graph, 4)
    const others = placed.filter((it) => it !== device && it.area?.value === device.area?.value)
    expect(near).toHaveLength(Math.min(4, others.length))
    const distances = near.map((it) => between(device, it))
    expect(distances).toEqual([...distances].sort((a, b) => a - b))
    for (const other of others) if (!near.includes(other)) expect(between(device, other)).toBeGreaterThanOrEqual(distances.at(-1) ?? 0)
  }
})

test('a device without a place on the plan is near to none', () => {
  const [device] = machine.devices
  if (!device) throw new Error('the example has no device')
  expect(nearbyDevices({ ...device, x: undefined }, graph)).toEqual([])
})
