import type { Graph } from '../../model/graph.ts'
import type { Device, Machine, Signal } from '../../model/machine.ts'
import { type ContactEvidence, contactOfMeaning, contactOfPart, contactOfPin } from '../contact-evidence.ts'
import type { Rule } from '../rule.ts'

/** Terminals are numbered by contact where so many of the list are, and at most one in ten is not. */
const enough = 3

export const contactContradicted: Rule = {
  id: 'contact-contradicted',
  severity: 'warning',
  summary: 'The I/O list calls a contact normally open or closed, and its terminal, its part or its meaning says the other.',
  why: 'The technician measures the contact and takes a good one for a broken one.',
  source: 'EN 50005 for the numbers of terminals, from memory; otherwise common practice',

  *check(machine, graph) {
    const byPin = machine.signals.flatMap((signal) => pinOf(signal, graph) ?? [])
    const against = byPin.filter(({ signal, evidence }) => evidence.contact !== signal.contact?.value)
    const numbered = byPin.length - against.length >= enough && against.length <= Math.max(2, byPin.length / 10)
    const fromPins = new Map(numbered ? against.map(({ signal, evidence }) => [signal, evidence]) : [])
    for (const signal of machine.signals) {
      const { tag, contact } = signal
      const device = graph.device(tag.value)
      if (!contact || !device) continue
      const evidence = fromPins.get(signal) ?? againstOthers(signal, device, machine, graph)
      if (!evidence) continue
      yield {
        message: `\`${tag.value}\` is ${contact.value} in the I/O list, and ${evidence.says}`,
        place: contact.place,
        related: [{ label: 'it says so here', place: evidence.place }],
        help: 'check the drawing and correct one of them',
      }
    }
  },
}

function pinOf(signal: Signal, graph: Graph): { signal: Signal; evidence: ContactEvidence } | undefined {
  const device = graph.device(signal.tag.value)
  const evidence = device && signal.contact && contactOfPin(signal, device)
  return evidence && { signal, evidence }
}

function againstOthers(signal: Signal, device: Device, { sourceLanguage }: Machine, graph: Graph): ContactEvidence | undefined {
  const part = device.part && graph.part(device.part.value)
  const own = [
    part && contactOfPart(part, device, sourceLanguage),
    contactOfMeaning(signal, device, sourceLanguage),
    channelBefore(signal, graph.signalsOf(signal.tag.value), sourceLanguage),
  ]
  return own.find((evidence) => evidence && evidence.contact !== signal.contact?.value)
}

/** An earlier channel of the same device that means the same: it comes from the same kind of contact. */
function channelBefore(signal: Signal, channels: readonly Signal[], language: string): ContactEvidence | undefined {
  const meaning = signal.meaning?.[language]?.value
  if (meaning === undefined) return undefined
  const [first] = channels.slice(0, channels.indexOf(signal)).filter((other) => other.contact && other.meaning?.[language]?.value === meaning)
  if (!first?.contact) return undefined
  return { contact: first.contact.value, says: `another channel of it with the same meaning is ${first.contact.value}`, place: first.contact.place }
}
