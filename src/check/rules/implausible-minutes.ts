import type { Page } from '../../model/machine.ts'
import { pageLevels } from '../../model/page-level.ts'
import { readPages } from '../../model/prose/read-text.ts'
import type { Rule } from '../rule.ts'

/** A fast reader of English prose; the mean of adults is 238 words a minute (Brysbaert 2019, from memory). */
const fastWordsPerMinute = 300
/** Time to read and answer a question, from common practice. */
const minutesPerQuestion = 0.5
/** Least time to show a step at the machine, and to show a task to the person who judges it. */
const minutesPerStep = 0.25
const minutesPerTask = 2
/** A slow reader who looks at the machine in between, reads about a word a second and needs ten minutes to begin. */
const slowWordsPerMinute = 40
const slowMinutesPerQuestion = 4
const slowStartMinutes = 10

export const implausibleMinutes: Rule = {
  id: 'implausible-minutes',
  severity: 'warning',
  summary: 'The minutes of a lesson do not go with its words.',
  why: 'Sessions are cut by these minutes: the plan of a day is wrong by as much.',
  source: 'speed of silent reading: Brysbaert 2019, mean 238 words a minute (from memory); the limits are ours',

  *check(machine, graph) {
    const words = new Map(
      pageLevels(
        machine,
        readPages(machine).filter(({ page, language }) => page.collection === 'lessons' && language === page.language),
      ).map(({ page, counts }) => [page.id, counts.words]),
    )
    for (const lesson of graph.pagesIn('lessons')) {
      const count = words.get(lesson.id)
      if (count === undefined || lesson.frontmatter.draft) continue
      const [least, most] = plausible(lesson, count)
      const { minutes } = lesson.frontmatter
      if (minutes >= least && minutes <= most) continue
      yield {
        message: minutes < least ? `${inMinutes(minutes)} is too short for this lesson` : `${inMinutes(minutes)} is long for this lesson`,
        place: lesson.placeOf(['minutes']),
        note: `it has ${count} words and ${lesson.frontmatter.questions?.length ?? 0} questions${tasksOf(lesson)}: ${Number.isFinite(most) ? `${least} to ${inMinutes(most)}` : `${inMinutes(least)} or more`} would go with them`,
        help: minutes < least ? 'raise the minutes, or split the lesson' : 'lower the minutes, or say under `mode` that it is shown or practised',
      }
    }
  },
}

const tasksOf = ({ frontmatter: { practical } }: Page<'lessons'>) =>
  practical ? `, and ${practical.length} task${practical.length === 1 ? '' : 's'} to show` : ''

const inMinutes = (minutes: number) => `${minutes} minute${minutes === 1 ? '' : 's'}`

/** From a fast reader to a slow one; how long a lesson takes that is shown, practised or judged, its words do not tell. */
function plausible(
  { frontmatter: { mode, questions = [], practical = [] }, elements }: Page<'lessons'>,
  words: number,
): [least: number, most: number] {
  const shown = mode === 'demonstrate' || mode === 'practise' ? elements('Step').length : 0
  const tasks = practical.length * minutesPerTask
  const least = Math.ceil(words / fastWordsPerMinute + shown * minutesPerStep + questions.length * minutesPerQuestion + tasks)
  const most = Math.ceil(slowStartMinutes + words / slowWordsPerMinute + questions.length * slowMinutesPerQuestion)
  return [least, mode === 'read' ? most : Number.POSITIVE_INFINITY]
}
