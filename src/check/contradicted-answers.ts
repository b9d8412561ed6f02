import type { Graph } from '../model/graph.ts'
import type { WithoutLockout } from '../model/schema/without-lockout.ts'
import type { Problem } from '../source/finding.ts'
import type { Place } from '../source/place.ts'

/** Answers that energy.yaml contradicts: each once, at the answer. */
export function* contradictedAnswers(
  { energy }: Extract<WithoutLockout, { because: 'one-lock' }>,
  at: (key: string) => Place,
  graph: Graph,
): Iterable<Problem> {
  const source = graph.energy(energy)
  if (!source) return
  const points = new Set(source.isolation.map(({ tag }) => tag.value))
  const facts: [key: string, isSo: boolean, fact: string][] = [
    ['noStoredEnergy', source.stored, 'stores energy'],
    ['noStoredEnergy', source.reaccumulates && !source.stored, 'builds up again'],
    ['oneLock', points.size > 1, `has ${points.size} isolation points`],
    ['lockDeenergises', source.isolation.some(({ lockable }) => !lockable), 'has an isolation point that takes no lock'],
  ]
  for (const [key, isSo, fact] of facts) {
    if (!isSo) continue
    yield {
      message: `\`${key}\` is answered with yes, and energy source \`${energy}\` ${fact}`,
      place: at(key),
      related: [{ label: 'the source', place: source.id.place }],
      help: 'correct the answer, and name the lockout that the job needs',
    }
  }
}
