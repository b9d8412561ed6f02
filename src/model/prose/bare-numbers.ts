import type { LinkedMachine } from '../machine.ts'
import type { BareTag } from './bare-tags.ts'
import { otherNames } from './known-names.ts'
import { type NumberMention, numberReader } from './number-reader.ts'
import type { Prose } from './prose.ts'

/** A drawing, part or alarm that words speak of without an element, and the words. */
export interface BareNumber {
  prose: Prose
  mention: NumberMention
}

/** Every bare number in some words. A kind whose list could not be read is left out; what has been read as a tag is one. */
export function bareNumbers(machine: LinkedMachine, words: readonly Prose[], tags: readonly BareTag[]): BareNumber[] {
  const { drawings, parts, alarms, devices, unread, absent } = machine
  const numbersOf = (kind: 'drawing' | 'part' | 'alarm', rows: readonly { number: { value: string } }[]) => {
    if (unread.has(kind)) return new Set<string>()
    const gone = [...absent.keys()].flatMap((name) => (name.startsWith(`${kind}:`) ? [name.slice(kind.length + 1)] : []))
    return new Set([...rows.map(({ number }) => number.value), ...gone])
  }
  const numbers = { drawing: numbersOf('drawing', drawings), part: numbersOf('part', parts), alarm: numbersOf('alarm', alarms) }
  const read = numberReader(numbers, new Set([...otherNames(machine), ...devices.map(({ tag }) => tag.value)]))
  const tagsIn = Map.groupBy(tags, ({ prose }) => prose)
  return words.flatMap((prose) => {
    const taken = tagsIn.get(prose) ?? []
    const isFree = ({ start, end }: NumberMention) => !taken.some(({ mention }) => mention.start < end && start < mention.end)
    return read(prose.text)
      .filter(isFree)
      .map((mention) => ({ prose, mention }))
  })
}
