import { checkouts, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const contactAgainstPart: Rule = {
  id: 'contact-against-part',
  severity: 'warning',
  summary: 'The I/O list calls a contact normally open or closed, and the data of the device say the other.',
  why: 'With a device of the other kind every reading is inverted, and the lesson takes a good one for a fault.',
  source: 'house rule',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, checkout, wired } of graph.made(checkouts))
      for (const { signal, values } of wired) {
        const own = values.placedChoice('contact')
        if (!signal?.contact || !own || own.value === signal.contact.value || !/^(DI|SDI|CNT)$/.test(signal.type.value)) continue
        // Of light, NO and NC are said of the beam by one and of the object by the other.
        if (checkout.technology.startsWith('photoelectric') || !isNew(signal.contact.place)) continue
        yield {
          message: `\`${device.tag.value}\` is ${signal.contact.value} in the I/O list, and the data say \`contact: ${own.value}\``,
          place: signal.contact.place,
          related: [{ label: 'the data of the device', place: own.place }],
          help: 'look at the device itself, and correct the one that is wrong',
        }
      }
  },
}
