import { firstInSteps } from '../entry-step.ts'
import type { Rule } from '../rule.ts'

const slow = {
  en: ['run|send|drive|move|start|operate|cycle|choose|select|jog|let', 'slow(?:ly|er)?|(?:half|low|reduced|crawl) speed|inching'],
  es: [
    'haga|ponga|pase|mueva|arranque|deje|elija|seleccione|accione|marche',
    'lent[oa]s?|lentamente|despacio|(?:media|baja) velocidad|velocidad (?:reducida|baja|lenta)',
  ],
} as const

/** A sentence that runs something slowly, in the languages whose words are known. */
const slowRuns = new Map(
  Object.entries(slow).map(([language, [verb, pace]]) => [
    language,
    new RegExp(
      `(?<!\\p{L})(?:(?:${verb})(?!\\p{L})[^.!?]*(?<!\\p{L})(?:${pace})|(?:${pace})(?!\\p{L})[^.!?]*(?<!\\p{L})(?:${verb}))(?!\\p{L})`,
      'iu',
    ),
  ]),
)

export const setUpWithoutSlowRun: Rule = {
  id: 'set-up-without-slow-run',
  severity: 'warning',
  summary: 'The steps of a set-up do not run the machine slowly first.',
  why: 'What is set wrong shows at full speed: it breaks the machine, and throws pieces.',
  source: 'house rule; common practice: the first run after a set-up is a slow one',

  *check(_, graph) {
    for (const page of graph.pagesIn('procedures')) {
      const run = slowRuns.get(page.language)
      // A draft is told of as such.
      if (page.frontmatter.kind !== 'set-up' || page.frontmatter.draft || !run || firstInSteps(page, run)) continue
      yield {
        message: 'no step of this set-up runs the machine slowly first',
        place: page.placeOf(['kind']),
        help: 'end with a step that runs it slowly, and say what to watch',
      }
    }
  },
}
