import { expect, test } from 'vitest'
import { compareRecords } from '../../src/changes/compare-records.ts'
import { records } from './records.ts'

const count = 5000
const functions = ['Lift down', 'Lift up', 'Gripper closed', 'Door locked', 'Belt runs', 'Tank full', 'Oil low', 'Air there']

/** A list of `count` devices and signals. In the new revision a fifth each has another tag, address, text or part. */
function revision(isNew: boolean) {
  const rows = Array.from({ length: count }, (_, index) => {
    const turn = isNew ? index % 5 : 4
    const tag = `B${turn === 0 ? index + 5 : index}`
    const text = `${functions[index % functions.length]} at station ${Math.floor(index / 8)}${turn === 2 ? ', front' : ''}`
    const part = `P${(index % 40) + (turn === 3 ? 100 : 0)}`
    return {
      device: `${tag};switch;${text};area${index % 12};${part};E-${index % 60};1`,
      signal: `${tag};DI;${Math.floor(index / 8)}.${index % 8}${turn === 1 ? '0' : ''};X${index}`,
    }
  })
  return records({ devices: rows.map(({ device }) => device), signals: rows.map(({ signal }) => signal) })
}

/** Processor time in ms: other work on the computer does not count. */
const timed = (run: () => void) => {
  const began = process.cpuUsage()
  run()
  return process.cpuUsage(began).user / 1000
}

test('5,000 devices with 4,000 changes are compared in less than half a second', () => {
  const [old, now] = [revision(false), revision(true)]
  const times = [1, 2, 3].map(() => timed(() => expect(compareRecords(old, now).changes.length).toBeGreaterThan(4000)))
  expect(Math.min(...times)).toBeLessThan(500)
})

test('5,000 devices that are all called the same are compared in less than two seconds', () => {
  const spare = (first: number) =>
    records({ devices: Array.from({ length: count }, (_, index) => `B${first + index};terminal;Spare;cabinet;;E-1;1`) })
  expect(timed(() => compareRecords(spare(0), spare(2500)))).toBeLessThan(2000)
})
