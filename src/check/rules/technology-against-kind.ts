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
    const usual = new Map([...Map.groupBy(devices, kindOf)].map(([kind, ofKind]) => [kind, usualOf(ofKind)]))
    for (const device of devices) {
      const { tag, technology } = device
      if (!technology) continue
      const kind = kindOf(device)
      const expected = namedBy(kind) ?? usual.get(kind)
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

/** The technology of all devices of a kind, or of all but one of them. */
function usualOf(ofKind: readonly Device[]): Expected | undefined {
  const byTechnology = Map.groupBy(
    ofKind.flatMap(({ technology }) => technology ?? []),
    ({ value }) => value,
  )
  const [most, next, ...others] = [...byTechnology.values()].sort((a, b) => b.length - a.length)
  const [first] = most ?? []
  const certain = first && most && most.length >= enough && (next?.length ?? 0) <= 1 && others.length === 0
  return certain ? { name: first.value, place: first.place } : undefined
}
