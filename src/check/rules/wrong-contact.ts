import { contactClaim, isSaidOf } from '../contact-claims.ts'
import { contactNames, openAndClose } from '../contacts.ts'
import type { Rule } from '../rule.ts'
import { signalSentences } from '../signal-sentences.ts'

export const wrongContact: Rule = {
  id: 'wrong-contact',
  severity: 'warning',
  summary: 'A sentence calls a contact normally open or normally closed, and the I/O list says the other.',
  why: 'The reader measures the contact and takes a good one for a broken one.',
  source: 'house rule',

  *check(_machine, graph) {
    for (const { text, named: tags, device, signals, place } of signalSentences(graph)) {
      const { contact } = signals[0]
      // A device with contacts of both kinds may be meant by either.
      if (!contact || signals.some((other) => other.contact?.value !== contact.value) || openAndClose.has(device.technology?.value ?? '')) continue
      const claim = contactClaim(text)
      if (!claim || claim.contact === contact.value || !tags.some((tag) => isSaidOf(text, claim, tag))) continue
      yield {
        message: `\`${device.tag.value}\` is ${contactNames[contact.value]} in the I/O list`,
        place: place(claim.start, claim.end),
        related: [{ label: 'its contact stands here', place: contact.place }],
        help: 'check the drawing and correct one of them',
      }
    }
  },
}
