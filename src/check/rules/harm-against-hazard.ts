import { signalWord } from '../../hazard/signal-word.ts'
import { type Hazard, statedHarm } from '../../model/hazard.ts'
import { attributePlace, type PlacedMessage } from '../../model/placed-messages.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const harmAgainstHazard: Rule = {
  id: 'harm-against-hazard',
  severity: 'error',
  summary: 'A safety message states another harm than the hazard that it speaks of.',
  why: 'The same hazard would have two signal words, and a reader believes the weaker one.',
  source: 'house rule; ISO 12100, 6.4: the manual tells the risk that is left',
  guards: 'people',

  *check({ hazards = [] }, graph) {
    const messages = graph.safetyMessages()
    for (const message of messages) {
      const [name] = keys.filter((key) => message.written[key] !== undefined)
      const [hazard, other] = message.hazards
      if (name && other)
        yield {
          message: `\`${name}\` is stated for several hazards at once`,
          place: attributePlace(message, name),
          note: 'each of them has its own risk in hazards.yaml, and the greatest decides',
          help: `take \`${name}\` out here`,
        }
      else if (hazard) yield* contradictions(message, hazard)
    }
    const ofCaution = Map.groupBy(
      messages.filter(({ page, text }) => page.collection === 'cautions' && text.language === page.language),
      ({ page }) => page.name,
    )
    for (const hazard of hazards)
      for (const message of ofCaution.get(hazard.caution?.value ?? '') ?? []) {
        const [own, said] = [statedHarm(hazard.residual), message.harms[0]]
        if (own && said && signalWord(own) !== signalWord(said))
          yield {
            message: `hazard \`${hazard.id.value}\` takes \`${signalWord(own)}\`, and its caution says \`${signalWord(said)}\``,
            place: hazard.residualPlace,
            related: [{ label: 'the message of the caution', place: message.place }],
            help: 'correct the one that is wrong, or write a `message` of its own for the hazard',
          }
      }
  },
}

const keys = ['severity', 'accident', 'injury'] as const

function* contradictions(message: PlacedMessage, { id, residual, residualPlace }: Hazard): Iterable<Problem> {
  const key = keys.find((it) => message.written[it] !== undefined && message.written[it] !== residual[it])
  if (!key) return
  yield {
    message: `\`${key}\` is \`${message.written[key]}\`, and hazard \`${id.value}\` says \`${residual[key] ?? 'nothing'}\``,
    place: attributePlace(message, key),
    related: [{ label: 'the risk of the hazard', place: residualPlace }],
    help: `take \`${key}\` out here: the harm comes from hazards.yaml`,
  }
}
