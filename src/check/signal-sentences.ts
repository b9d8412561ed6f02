import type { Graph } from '../model/graph.ts'
import type { Device, Machine, Signal } from '../model/machine.ts'
import type { Prose } from '../model/prose/prose.ts'
import type { Place } from '../source/place.ts'
import { namedDevices } from './named-devices.ts'

/** A sentence that names one device, which has signals. */
export interface SignalSentence {
  text: string
  /** Where the text names the device. */
  named: readonly { start: number; end: number }[]
  prose: Prose
  device: Device
  /** In the order of the I/O list, at least one. */
  signals: readonly [Signal, ...Signal[]]
  place(start: number, end: number): Place
}

/** Every sentence from which it is clear which device is spoken of. */
export const signalSentences = (graph: Graph): readonly SignalSentence[] => graph.made(findSentences)

function findSentences(_machine: Machine, graph: Graph): SignalSentence[] {
  const found: SignalSentence[] = []
  for (const { prose, named } of namedDevices(graph)) {
    for (const [start, end] of sentencesOf(prose.text)) {
      const here = named.filter((it) => it.start >= start && it.end <= end)
      const [first] = here
      if (!first || here.some(({ device }) => device !== first.device)) continue
      const [signal, ...others] = graph.signalsOf(first.device.tag.value)
      if (!signal) continue
      found.push({
        named: here.map((it) => ({ start: it.start - start, end: it.end - start })),
        text: prose.text.slice(start, end).replace(/\s/g, ' '),
        prose,
        device: first.device,
        signals: [signal, ...others],
        place: (from, to) => prose.place(start + from, start + to),
      })
    }
  }
  return found
}

/** Where each sentence begins and ends. `N.C.` ends none. */
function sentencesOf(text: string): [start: number, end: number][] {
  const ends = [...text.matchAll(/(?<!\b[NC]\.[OCA])[.!?;](?=\s)/gu)].map(({ index }) => index + 1)
  return [0, ...ends].map((start, index) => [start, ends[index] ?? text.length])
}
