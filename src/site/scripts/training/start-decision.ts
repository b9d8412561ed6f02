import { isSamePerson } from '../../../training/person.ts'
import type { TrainingRecord } from '../../../training/record.ts'
import type { LessonSheet } from '../../training/lesson-sheet.ts'
import { fill } from '../../words/fill.ts'
import { required } from '../dom.ts'
import { type PersonFields, personFields } from './person-fields.ts'
import { withNames } from './record-for.ts'
import { say, sayFault, sayRecorded, shortHash } from './said.ts'
import { type TrainingPage, today } from './training-page.ts'

/** A trainer excuses a learner from a lesson, or takes back what was recorded. Never the learner, and never without a reason. */
export function startDecision(root: HTMLElement, sheet: LessonSheet, page: TrainingPage, recorded: () => void): Pick<PersonFields, 'show' | 'know'> {
  const { words } = page
  const part = required<HTMLElement>(root, '[data-decision]')
  const said = required<HTMLElement>(part, '[data-said]')
  const reason = required<HTMLInputElement>(part, '[data-decision-reason]')
  const [learnerFields, deciderFields] = [personFields(part, 'learner', page), personFields(part, 'decider', page)]
  part.hidden = false

  required(part, '[data-decision-form]').addEventListener('submit', async (event) => {
    event.preventDefault()
    const pressed = event instanceof SubmitEvent ? event.submitter : null
    const isWaiver = !(pressed instanceof HTMLButtonElement) || pressed.value === 'waived'
    const learner = learnerFields.read()
    const decider = learner && deciderFields.read()
    if (!learner || !decider) return
    const why = reason.value.trim()
    if (isSamePerson(learner.id, decider.id)) return say(said, words.decideSame, [], true)
    if (why === '') return say(said, words.decideNoReason, [], true)
    const what = { person: learner.id, lesson: sheet.lesson, revision: sheet.revision, date: today(), by: decider.id, reason: why }
    const decision: TrainingRecord = { event: isWaiver ? 'waived' : 'revoked', ...what }
    const records = await withNames(page, [learner, decider], decision)
    const answer = await page.store.append(...records)
    if ('fault' in answer) return sayFault(page, said, answer.fault, records)
    reason.value = ''
    const entry = answer.added[answer.added.length - 1]
    const values = { person: `${learner.name} (${learner.id})`, entry: entry?.seq ?? '', hash: shortHash(entry?.hash) }
    await sayRecorded(page, said, fill(isWaiver ? words.decideWaived : words.decideRevoked, values))
    recorded()
  })

  return {
    show: (person) => learnerFields.show(person),
    know(people) {
      for (const fields of [learnerFields, deciderFields]) fields.know(people)
    },
  }
}
