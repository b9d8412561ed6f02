import type { Device, Signal } from '../../model/machine.ts'
import { contentStems } from '../content-stems.ts'
import type { Rule } from '../rule.ts'

/** So many words of each description must fit the other device. */
const enough = 2

/** A word that so many of the compared devices have tells none of them apart. */
const common = 50

export const exchangedDescriptions: Rule = {
  id: 'exchanged-descriptions',
  severity: 'warning',
  summary: 'The descriptions of two devices fit each other, and neither fits its own kind, place and signals.',
  why: 'The reader finds one device where the other is meant.',
  source: 'house rule',

  *check({ devices, sourceLanguage }, graph) {
    const misfits = devices.flatMap((device) => {
      const description = device.description[sourceLanguage]
      const said = contentStems(description?.value ?? '')
      const known = contentStems(knownOf(device, graph.signalsOf(device.tag.value), sourceLanguage))
      return description && said.size > 0 && sharedBy(said, known) === 0 ? [{ device, description, said, known }] : []
    })
    const byStem = new Map<string, typeof misfits>()
    for (const misfit of misfits) {
      for (const stem of misfit.known) {
        const list = byStem.get(stem)
        if (list) list.push(misfit)
        else byStem.set(stem, [misfit])
      }
    }
    const told = new Set<Device>()
    for (const one of misfits) {
      const lists = [...one.said].map((stem) => byStem.get(stem) ?? []).filter(({ length }) => length <= common)
      const candidates = new Set(lists.flat())
      for (const other of candidates) {
        if (told.has(one.device) || told.has(other.device)) continue
        if (sharedBy(other.said, one.known) < enough || sharedBy(one.said, other.known) < enough) continue
        told.add(one.device).add(other.device)
        yield {
          message: `the descriptions of \`${one.device.tag.value}\` and \`${other.device.tag.value}\` look exchanged`,
          place: one.description.place,
          related: [{ label: 'the other one', place: other.description.place }],
          note: 'each shares words with kind, place and signals of the other device, and none with its own',
          help: 'put each description to its device, or say in it what the device does',
        }
      }
    }
  },
}

/** What else is written of a device. */
function knownOf({ kind, place, area, technology }: Device, signals: readonly Signal[], language: string): string {
  const ofSignals = signals.flatMap(({ meaning, symbol }) => [meaning?.[language]?.value, symbol?.value])
  return [kind[language]?.value, place?.[language]?.value, area?.value, technology?.value, ...ofSignals].filter((it) => it !== undefined).join(' ')
}

function sharedBy(said: ReadonlySet<string>, known: ReadonlySet<string>): number {
  let count = 0
  for (const stem of said) if (known.has(stem)) count += 1
  return count
}
