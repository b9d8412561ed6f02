import type { Graph } from '../../model/graph.ts'
import type { Device } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

/** So many other devices with the part, all with the same number of signals, say how many it has. */
const enough = 2

export const fewerSignalsThanOthers: Rule = {
  id: 'fewer-signals-than-others',
  severity: 'warning',
  summary: 'A device has fewer signals in the I/O list than every other device with the same part.',
  why: 'A row of the I/O list is missing, such as the second channel of an emergency stop, and nobody can look for its terminal.',
  source: 'house rule',

  *check(machine, graph) {
    for (const [part, alike] of Map.groupBy(machine.devices, (device) => device.part?.value)) {
      if (part === undefined || alike.length <= enough) continue
      const byCount = Map.groupBy(alike, ({ tag }) => graph.signalsOf(tag.value).length)
      const [most, fewest] = [Math.max(...byCount.keys()), Math.min(...byCount.keys())]
      const [few, other] = byCount.get(fewest) ?? []
      const full = byCount.get(most)?.[0]
      // A device without any signal is reported as such, and a row that cannot be read is the cause of it.
      if (byCount.size !== 2 || fewest === 0 || !few || other || !full || machine.absent.has(`signal:${few.tag.value}`)) continue
      yield problemOf(few, full, fewest, most, graph)
    }
  },
}

function problemOf({ tag, part }: Device, full: Device, own: number, most: number, graph: Graph) {
  const [first] = graph.signalsOf(tag.value)
  const named = new Set(graph.signalsOf(tag.value).flatMap(({ signal }) => signal?.value ?? []))
  const missing = graph.signalsOf(full.tag.value).flatMap(({ signal }) => (signal && !named.has(signal.value) ? [`\`${signal.value}\``] : []))
  return {
    message: `\`${tag.value}\` has ${own === 1 ? '1 signal' : `${own} signals`}, and the others with part \`${part?.value}\` have ${most}`,
    place: first?.tag.place ?? tag.place,
    related: graph
      .signalsOf(full.tag.value)
      .map(({ place }, index) => ({ label: `signal ${index + 1} of \`${full.tag.value}\``, place }))
      .slice(0, 4),
    ...(missing.length > 0 && missing.length === most - own ? { note: `it lacks ${missing.join(', ')}` } : {}),
    help: 'add the rows that are missing in the I/O list, or correct the part of the device',
  }
}
