import type { Device, Part } from '../../model/machine.ts'
import { countsPieces } from '../../model/unit-of-measure.ts'
import { remembered } from '../../source/once.ts'
import { type KindWords, kindWords } from '../kind-words.ts'
import type { Rule } from '../rule.ts'
import { tagNumber } from '../tag-number.ts'

export const partAgainstKind: Rule = {
  id: 'part-against-kind',
  severity: 'warning',
  summary: 'The part of a device is called what the device is not.',
  why: 'The part number or the kind is that of another device, and the reader orders the wrong part.',
  source: 'house rule',

  *check(machine, graph) {
    const { devices, parts, sourceLanguage } = machine
    const words = kindWords(graph).get(sourceLanguage)
    if (!words) return
    const called = new Map(parts.map(({ number, description }) => [number.value, words.kindOfGoods(description[sourceLanguage]?.value ?? '')]))
    const technologiesOf = technologiesByKind(devices, words)
    for (const device of devices) {
      const { tag, kind, part, technology } = device
      const goods = part && called.get(part.value)
      const written = kind[sourceLanguage]
      if (!part || goods === undefined || !written || words.suits(goods, device)) continue
      // Two words for one thing: another device of the kind that the part is has the technology of this one.
      if (technology && technologiesOf(goods).has(technology.value)) continue
      const sharing = graph.devicesWithPart(part.value)
      const row = graph.part(part.value)
      const fitting = sharing.filter((other) => words.suits(goods, other))
      if (sharing.length > 1 && fitting.length === 0) continue
      // One part that carries several tags: a button and its lamp, a motor and its encoder.
      if (sharing.length > 1 && row && (!countsPieces(row.unit?.value) || row.quantity.value < sharing.length)) continue
      if (fitting.some((other) => tagNumber(other.tag.value) === tagNumber(tag.value))) continue
      yield {
        message: `\`${tag.value}\` is a \`${written.value}\`, and its part \`${part.value}\` is a \`${goods}\``,
        place: part.place,
        related: [{ label: 'its kind', place: written.place }, ...(row ? [{ label: 'the part', place: placeOf(row, sourceLanguage) }] : [])],
        help: 'correct the part number, or the kind of the device',
      }
    }
  },
}

const placeOf = ({ description, place }: Part, language: string) => description[language]?.place ?? place

/** Which technologies the devices have that may be called by a name of goods. */
function technologiesByKind(devices: readonly Device[], words: KindWords): (name: string) => ReadonlySet<string> {
  const kinds = [...new Map(devices.map((device) => [`${device.technology?.value} ${Object.values(device.kind)[0]?.value}`, device])).values()]
  return remembered((name) => new Set(kinds.filter((device) => words.suits(name, device)).flatMap(({ technology }) => technology?.value ?? [])))
}
