import type { facts } from '../../model/elements.ts'
import type { Device, Signal } from '../../model/machine.ts'
import { writtenSheet } from '../../model/sheet-reference.ts'
import type { Spoken } from '../../model/words.ts'
import type { Context } from '../context.ts'

export type FactName = (typeof facts)[number]

/** A fact of a device in words. Undefined when the data do not hold it. */
export function factOf(context: Context, device: Device, of: FactName): Spoken | undefined {
  const { language, graph } = context
  const own = (text: string | undefined): Spoken | undefined => (text === undefined || text === '' ? undefined : { text, language })
  const signals = graph.signalsOf(device.tag.value)
  const each = (value: (signal: Signal) => string | undefined) => own([...new Set(signals.flatMap((signal) => value(signal) ?? []))].join(', '))
  switch (of) {
    case 'tag':
      return own(device.tag.value)
    case 'kind':
      return context.say(device.kind)
    case 'description':
      return context.say(device.description)
    case 'place':
      return device.place && context.say(device.place)
    case 'area': {
      const area = graph.area(device.area?.value)
      return area && context.say(area.name)
    }
    case 'meaning': {
      const meaning = signals.find((signal) => signal.meaning)?.meaning
      return meaning && context.say(meaning)
    }
    case 'range':
      return each(rangeOf)
    case 'drawing':
      return own(device.drawing && (device.sheet ? `${device.drawing.value} / ${writtenSheet(device.sheet)}` : device.drawing.value))
    case 'part':
      return own(device.part?.value)
    default:
      return each((signal) => signal[of]?.value)
  }
}

/** The range of an analogue signal with its unit: `0 to 10 bar`. */
export function rangeOf({ low, high, unit }: Signal): string | undefined {
  if (!low || !high) return undefined
  return `${low.value}–${high.value}${unit ? ` ${unit.value}` : ''}`
}
