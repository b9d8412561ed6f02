import type { Device, Machine } from '../../model/machine.ts'
import { kindClaim } from '../kind-claims.ts'
import { type KindWords, kindWords } from '../kind-words.ts'
import { namedDevices } from '../named-devices.ts'
import type { Rule } from '../rule.ts'

export const wrongKind: Rule = {
  id: 'wrong-kind',
  severity: 'warning',
  summary: 'A sentence calls a device what it is not in the device list.',
  why: 'The tag is probably that of another device, and the reader is sent to the wrong one.',
  source: 'house rule',

  *check(machine, graph) {
    const byLanguage = kindWords(graph)
    for (const { prose, named } of namedDevices(graph)) {
      const words = byLanguage.get(prose.language)
      if (!words) continue
      for (const { device, start, end } of named) {
        const claim = kindClaim(prose.text, { start, end }, words)
        const kind = device.kind[prose.language]
        if (!claim || !kind || words.suits(claim.kind, device)) continue
        yield {
          message: `\`${device.tag.value}\` is called \`${claim.kind}\` and is \`${kind.value}\` in the device list`,
          place: prose.place(claim.start, claim.end),
          related: [{ label: 'its kind stands here', place: kind.place }],
          help: helpFor(claim.kind, machine, words),
        }
      }
    }
  },
}

function helpFor(kind: string, { devices }: Machine, words: KindWords): string {
  const meant = devices.filter((device: Device) => words.suits(kind, device)).map(({ tag }) => `\`${tag.value}\``)
  const others = meant.length > 3 ? `${meant.slice(0, 3).join(', ')} and ${meant.length - 3} more` : meant.join(', ')
  return meant.length > 0 ? `check which is meant; \`${kind}\` is the word for ${others}` : 'check which is meant, the tag or the word'
}
