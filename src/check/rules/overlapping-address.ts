import { highestBitOf, readAddress, sameAddress, spanOf } from '../../model/controller-address.ts'
import type { Signal } from '../../model/machine.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const overlappingAddress: Rule = {
  id: 'overlapping-address',
  severity: 'error',
  summary: 'The addresses of two devices take the same bits of the controller.',
  why: 'One of them is wrong, and a technician watches the signal of another device.',
  source: 'IEC 61131-3, direct representation; what the numbers count is a matter of the controller',

  *check(machine) {
    const highestBit = highestBitOf(machine)
    const known = machine.file.controller?.wordNumbers
    const points = ioPoints(machine)
    const [first, second] = (known ? [known] : (['bytes', 'words'] as const)).map((counts) => overlaps(points, counts, highestBit))
    if (!first) return
    for (const [wide, within] of first) {
      // What overlaps in one way of counting only is not certain.
      const certain = second ? within.filter((signal) => second.get(wide)?.includes(signal)) : within
      const [covered] = certain
      if (!covered) continue
      yield {
        message: `\`${wide.address.value}\` takes the same bits as ${certain.length === 1 ? `\`${covered.address.value}\`` : `${certain.length} other addresses`}`,
        place: wide.address.place,
        related: certain.slice(0, 3).map(({ address }) => ({ label: `\`${address.value}\` stands here`, place: address.place })),
        ...(known ? { note: `machine.yaml says that word numbers count ${known}` } : {}),
        help: 'correct one of the addresses',
      }
    }
  },
}

/** The widest address that reaches over others -> those others. A device may list a word and its bits. */
function overlaps(points: readonly Signal[], counts: 'bytes' | 'words', highestBit: number): Map<Signal, Signal[]> {
  const spans = points.flatMap((signal) => {
    const address = readAddress(signal.address.value)
    const span = address && address.area !== 'memory' && spanOf(address, counts, highestBit)
    return span ? [{ signal, area: address.area, ...span }] : []
  })
  const found = new Map<Signal, Signal[]>()
  for (const area of ['input', 'output'] as const) {
    const sorted = spans.filter((it) => it.area === area).sort((a, b) => a.start - b.start || b.end - a.end)
    let cover = sorted[0]
    for (const span of sorted.slice(1)) {
      if (cover && span.start < cover.end && !sameThing(cover.signal, span.signal)) {
        const within = found.get(cover.signal)
        if (within) within.push(span.signal)
        else found.set(cover.signal, [span.signal])
      }
      if (!cover || span.end > cover.end) cover = span
    }
  }
  return found
}

const sameThing = (a: Signal, b: Signal) =>
  (a.tag.value === b.tag.value && a.tag.value !== '') || sameAddress(a.address.value) === sameAddress(b.address.value)
