import { statedHarm } from '../../model/hazard.ts'
import type { Rule } from '../rule.ts'

export const incompleteHazard: Rule = {
  id: 'incomplete-hazard',
  severity: 'error',
  summary: 'A hazard lacks the text of its message, has two, or leaves its signal word open.',
  why: 'Whoever needs the warning would see none, or one whose word nobody decided.',
  source: 'ANSI Z535.6, in its manner: hazard, consequence, avoidance; its annex C for the word',
  guards: 'people',

  *check({ hazards = [] }) {
    for (const {
      id,
      message,
      caution,
      residual,
      residualPlace,
      symbols: [symbol],
    } of hazards) {
      if (message === undefined && caution === undefined)
        yield {
          message: `hazard \`${id.value}\` has no text for its message`,
          place: id.place,
          help: 'write `message` with hazard, consequence and avoid, or name the standard `caution` that speaks of it',
        }
      if (message && caution)
        yield {
          message: `hazard \`${id.value}\` has a message of its own and the caution \`${caution.value}\``,
          place: caution.place,
          help: 'keep one of them: readers must meet one text for one hazard',
        }
      if (caution && symbol)
        yield {
          message: `the sign \`${symbol.value}\` of hazard \`${id.value}\` is shown nowhere`,
          place: symbol.place,
          note: 'the message of a caution shows the signs that stand at it',
          help: 'write `symbols` at `<Safety>` in the caution',
        }
      if (statedHarm(residual)) continue
      const open = (['accident', 'injury'] as const).filter((name) => residual[name] === undefined)
      yield {
        message: `the risk of hazard \`${id.value}\` does not say ${open.map((name) => `\`${name}\``).join(' and ')}`,
        place: residualPlace,
        note: 'with death or serious injury the signal word depends on both probabilities',
        help: 'write `will` or `could` for each',
      }
    }
  },
}
