import { failingConditions } from '../../hazard/without-lockout.ts'
import type { Graph } from '../../model/graph.ts'
import type { WithoutLockout } from '../../model/schema/without-lockout.ts'
import type { Problem } from '../../source/finding.ts'
import { contradictedAnswers } from '../contradicted-answers.ts'
import { guardedEntry, type Task } from '../guarded-entry.ts'
import type { Rule } from '../rule.ts'

export const unfoundedNoLockout: Rule = {
  id: 'unfounded-no-lockout',
  severity: 'error',
  summary: 'A job or a recovery says that no lockout is needed, and the conditions for that are not all answered with yes.',
  why: 'The reader works without a lockout where the machine can start or energy can be let go.',
  source: '29 CFR 1910.147(c)(4)(i), note: eight conditions; (a)(2)(ii), note: minor servicing',
  guards: 'people',

  *check(machine, graph) {
    const named = Map.groupBy(machine.references, ({ page }) => page?.page.id)
    for (const page of [...graph.pagesIn('procedures'), ...graph.pagesIn('alarms')]) {
      const { lockout, withoutLockout: claim } = page.frontmatter
      if (claim) yield* unfounded(page, claim, graph)
      if (claim || lockout?.length !== 0) continue
      const entry = guardedEntry(
        page,
        (named.get(page.id) ?? []).filter((it) => it.page?.language === page.language),
        graph,
      )
      if (!entry) continue
      yield {
        message: 'a step goes behind a guard, and nothing says why no lockout is needed',
        place: entry.place,
        related: [{ label: 'the page says here that none is needed', place: page.placeOf(['lockout']) }],
        note: `\`${entry.device.tag.value}\`, which the page names, is covered by lockout \`${entry.lockout.name}\``,
        help: `write \`lockout: [${entry.lockout.name}]\`, or answer the conditions under \`withoutLockout\``,
      }
    }
  },
}

function* unfounded(page: Task, claim: WithoutLockout, graph: Graph): Iterable<Problem> {
  const at = (key: string) => page.placeOf(['withoutLockout', key])
  const [lockout] = page.frontmatter.lockout ?? []
  if (lockout !== undefined) {
    yield {
      message: `the page names lockout \`${lockout}\`, and says why none is needed`,
      place: page.placeOf(['withoutLockout']),
      related: [{ label: 'the lockout is named here', place: page.placeOf(['lockout', 0]) }],
      help: 'take one of them out',
    }
    return
  }
  const [first, ...others] = failingConditions(claim)
  if (first) {
    yield {
      message: `a condition for work without a lockout does not hold: \`${first.condition}\``,
      place: at(first.condition),
      related: others.map(({ condition, says }) => ({ label: `nor does this: ${says}`, place: at(condition) })),
      note: `the condition: ${first.says}; the claim stands only where all hold`,
      help: 'take `withoutLockout` out, and name the lockout that the job needs',
    }
    return
  }
  if (claim.because === 'one-lock') yield* contradictedAnswers(claim, at, graph)
  else if (!claim.protectedBy)
    yield {
      message: 'nothing says which devices protect instead of a lockout',
      place: at('otherProtection'),
      help: 'name their tags under `protectedBy`',
    }
}
