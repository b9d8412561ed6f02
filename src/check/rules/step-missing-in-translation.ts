import { writtenSteps } from '../../energy/lockout-of-page.ts'
import { claimedBy } from '../../model/lockout-phases.ts'
import type { Page, PageText } from '../../model/machine.ts'
import { attributeOf, elementsOf, type JsxElement } from '../../model/mdx-elements.ts'
import { namePlace } from '../../model/placed-messages.ts'
import { shownBody } from '../../model/shown-body.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const stepMissingInTranslation: Rule = {
  id: 'step-missing-in-translation',
  severity: 'error',
  summary: 'A step of a lockout is there in one language and not in another.',
  why: 'A composed step takes its place in one language alone, and two readers lock out in two ways.',
  source: '29 CFR 1910.147(c)(4): one procedure; house rule',
  guards: 'people',

  *check(_, graph) {
    for (const page of graph.pagesIn('lockout')) {
      const sources = graph.sourcesOf(page)
      const cutOff = new Set([...sources.map(({ id }) => id.value), ...sources.flatMap(({ pointNames }) => pointNames.map(({ value }) => value))])
      for (const text of page.translations.values()) yield* differences(page, text, cutOff)
    }
  },
}

type Step = ReturnType<typeof writtenSteps>[number]

const claimOf = ({ point, source }: Step) => point ?? source
const keyOf = (step: Step) => `${step.phase} ${claimOf(step) ?? ''}`

function* differences(page: Page<'lockout'>, text: PageText, cutOff: ReadonlySet<string>): Iterable<Problem> {
  const own = Map.groupBy(writtenSteps(page.body), keyOf)
  const translated = Map.groupBy(writtenSteps(shownBody(page, text.language)), keyOf)
  // A step that stands for what this lockout does not cut off is reported as such, and may be the missing one.
  const slips = new Set([...translated.values()].flatMap(([first]) => (first && !isKnown(first, cutOff) ? [first.phase] : [])))
  const short = [...own].flatMap(([key, steps]) => {
    const missing = steps[translated.get(key)?.length ?? 0]
    return missing && !slips.has(missing.phase) ? [{ missing, all: steps.length, there: translated.get(key)?.length ?? 0 }] : []
  })
  for (const { missing, all, there } of short) {
    const claim = claimOf(missing)
    yield {
      message: claim
        ? `a step to ${missing.phase} that stands for \`${claim}\` is missing here`
        : `the phase \`${missing.phase}\` has fewer steps here than in \`${page.language}\`: ${there} of ${all}`,
      place: phasePlace(missing.phase, text),
      related: [{ label: `it stands here in \`${page.language}\``, place: namePlace(missing.text, page) }],
      help: `write it in \`${text.language}\` too`,
    }
  }
  if (short.length > 0) return
  for (const [key, steps] of translated) {
    const further = steps[own.get(key)?.length ?? 0]
    if (!further || claimOf(further) === undefined || !isKnown(further, cutOff)) continue
    yield {
      message: `a step to ${further.phase} stands for \`${claimOf(further)}\` here, and not in \`${page.language}\``,
      place: namePlace(further.text, text),
      help: `write it in \`${page.language}\` too, or take it out`,
    }
  }
}

const isKnown = (step: Step, cutOff: ReadonlySet<string>) =>
  claimedBy[step.phase] === undefined || cutOff.has(claimOf(step) ?? '') || claimOf(step) === undefined

/** The list of steps of the phase in the translation; its beginning where it has none. */
function phasePlace(phase: Step['phase'], text: PageText): Problem['place'] {
  const steps = elementsOf(text.body, 'Steps').find((element: JsxElement) => attributeOf(element, 'phase') === phase)
  return steps ? namePlace(steps, text) : text.source.place(0)
}
