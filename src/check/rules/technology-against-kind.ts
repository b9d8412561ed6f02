import type { Device } from '../../model/machine.ts'
import { technologies } from '../../model/schema/common.ts'
import type { Place } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

/** So many other devices of one kind, all of one technology, say what the kind is. */
const enough = 2

export const technologyAgainstKind: Rule = {
  id: 'technology-against-kind',
  severity: 'warning',
  summary: 'The technology of a device is not that of its kind.',
  why: 'The lesson of another technology is shown for the device, and its readings are wrong.',
  source: 'house rule',

  *check({ devices, sourceLanguage }) {
    const kindOf = ({ kind }: Device) => kind[sourceLanguage]?.value.trim().toLowerCase() ?? ''
    const byKind = Map.groupBy(devices, kindOf)
    for (const device of devices) {
      const { tag, technology } = device
      if (!technology) continue
      const kind = kindOf(device)
      const expected = namedBy(kind) ?? usual(device, byKind.get(kind) ?? [])
      if (!expected || expected.name === technology.value) continue
      yield {
        message: `\`${tag.value}\` is a \`${kind}\`, and its technology is \`${technology.value}\``,
        place: technology.place,
        ...(expected.place ? { related: [{ label: `another \`${kind}\` is \`${expected.name}\``, place: expected.place }] } : {}),
        help: `write \`${expected.name}\`, or correct the kind`,
      }
    }
  },
}

interface Expected {
  name: string
  place?: Place
}

/** A kind that is the name of a technology: `limit switch`. */
function namedBy(kind: string): Expected | undefined {
  const name = technologies.find((it) => it === kind.replace(/[\s-]+/g, '-'))
  return name && { name }
}

/** The one technology of the other devices of this kind. */
function usual(device: Device, ofKind: readonly Device[]): Expected | undefined {
  const others = ofKind.flatMap(({ tag, technology }) => (technology && tag.value !== device.tag.value ? [technology] : []))
  const [first] = others
  return first && others.length >= enough && others.every(({ value }) => value === first.value)
    ? { name: first.value, place: first.place }
    : undefined
}
