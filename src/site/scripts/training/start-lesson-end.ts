import type { TrainingRecord } from '../../../training/record.ts'
import type { LessonSheet } from '../../training/lesson-sheet.ts'
import { fill } from '../../words/fill.ts'
import { required } from '../dom.ts'
import { lastLearner, type Person, rememberLearner } from './learner.ts'
import { offerPeople, personFields } from './person-fields.ts'
import type { QuizOutcome } from './question-nodes.ts'
import { withNames } from './record-for.ts'
import { sayFault, sayRecorded, shortHash } from './said.ts'
import { startDecision } from './start-decision.ts'
import { type Quiz, startQuestions } from './start-questions.ts'
import { startSignOff } from './start-sign-off.ts'
import { knownPeople, recordsOf, type TrainingPage, today } from './training-page.ts'

/** Questions, the record of their result, and the sign-off, at the end of a lesson. */
export function startLessonEnd(root: HTMLElement, page: TrainingPage): void {
  const { words } = page
  const sheet: LessonSheet = JSON.parse(required(root, '[data-lesson-sheet]').textContent ?? '')
  const recordPart = required<HTMLElement>(root, '[data-lesson-record]')
  const form = required<HTMLFormElement>(recordPart, '[data-record-form]')
  const said = required<HTMLElement>(root, ':scope > [data-said]')
  const fields = personFields(recordPart, 'learner', page)
  const signOff = startSignOff(root, sheet, page, () => void refresh())
  const decision = startDecision(root, sheet, page, () => void refresh())
  const questions = root.querySelector<HTMLElement>('[data-quiz]')
  let outcome: QuizOutcome | undefined

  const showLearner = (person: Person | undefined) => {
    if (person) for (const it of [fields, signOff, decision]) it?.show(person)
  }
  const quiz: Quiz | undefined =
    questions === null
      ? undefined
      : startQuestions(questions, sheet, words, (found) => {
          outcome = found
          recordPart.hidden = found === undefined
        })
  if (!quiz) recordPart.hidden = false

  async function refresh(): Promise<void> {
    const people = knownPeople(await recordsOf(page))
    for (const it of [fields, signOff, decision]) it?.know(people)
    offerPeople(root, people)
    required<HTMLElement>(root, '[data-to-records]').hidden = people.size === 0
  }

  form.addEventListener('submit', async (event) => {
    event.preventDefault()
    const person = fields.read()
    if (!person) return
    const records = await withNames(page, [person], resultOf(sheet, person, outcome))
    const answer = await page.store.append(...records)
    if ('fault' in answer) return sayFault(page, said, answer.fault, records)
    rememberLearner(page, person)
    showLearner(person)
    quiz?.reset()
    recordPart.hidden = true
    const entry = answer.added[answer.added.length - 1]
    await sayRecorded(
      page,
      said,
      fill(words.recordDone, { person: `${person.name} (${person.id})`, entry: entry?.seq ?? '', hash: shortHash(entry?.hash) }),
    )
    await refresh()
  })
  page.store.onChange(() => void refresh())
  showLearner(lastLearner(page))
  void refresh()
}

function resultOf({ lesson, revision, contentHash }: LessonSheet, { id }: Person, outcome: QuizOutcome | undefined): TrainingRecord {
  const what = { person: id, lesson, revision, date: today(), ...(contentHash === undefined ? {} : { contentHash }) }
  if (!outcome) return { event: 'completed', ...what }
  const { right, of, passed } = outcome
  return { event: passed ? 'passed' : 'failed', ...what, score: { right, of } }
}
