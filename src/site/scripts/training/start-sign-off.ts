import { isSamePerson } from '../../../training/person.ts'
import { isLessonRecord, type TrainingRecord } from '../../../training/record.ts'
import type { LessonSheet } from '../../training/lesson-sheet.ts'
import { fill } from '../../words/fill.ts'
import { required } from '../dom.ts'
import { type PersonFields, personFields } from './person-fields.ts'
import { withNames } from './record-for.ts'
import { say, sayFault, sayRecorded, shortHash } from './said.ts'
import { recordsOf, spelledAs, type TrainingPage, today } from './training-page.ts'

/** The sign-off by a person who judges: not the learner, and not before there is a result. Undefined where a lesson asks for none. */
export function startSignOff(
  root: HTMLElement,
  sheet: LessonSheet,
  page: TrainingPage,
  recorded: () => void,
): Pick<PersonFields, 'show' | 'know'> | undefined {
  const part = root.querySelector<HTMLElement>('[data-sign-off]')
  if (!part) return undefined
  const { words } = page
  const form = required<HTMLFormElement>(part, '[data-sign-form]')
  const said = required<HTMLElement>(part, '[data-said]')
  const [learnerFields, signerFields] = [personFields(form, 'learner', page), personFields(form, 'signer', page)]
  const items = [...part.querySelectorAll<HTMLInputElement>('[data-practical]')]
  let people: ReadonlyMap<string, string> = new Map()
  form.hidden = false

  form.addEventListener('submit', async (event) => {
    event.preventDefault()
    const learner = learnerFields.read()
    const signer = learner && signerFields.read()
    if (!learner || !signer) return
    const refuse = (text: string) => say(said, text, [], true)
    const open = items.filter(({ checked }) => !checked).length
    if (isSamePerson(learner.id, signer.id)) return refuse(words.signOffSame)
    if (open > 0) return refuse(fill(words.signOffOpen, { count: open }))
    const id = spelledAs(learner.id, people)
    const what = { person: id, lesson: sheet.lesson, revision: sheet.revision, date: today() }
    const signature: TrainingRecord = { event: 'signed-off', ...what, by: signer.id }
    const known = await page.store.entries()
    if ('fault' in known) return sayFault(page, said, known.fault, await withNames(page, [signer], signature))
    if (!people.has(id)) return refuse(fill(words.signOffUnknown, { person: id }))
    if (!hasResult(await recordsOf(page), id, sheet)) return refuse(fill(words.signOffNoResult, { person: people.get(id) ?? id }))
    const records = await withNames(page, [signer], signature)
    const answer = await page.store.append(...records)
    if ('fault' in answer) return sayFault(page, said, answer.fault, records)
    for (const item of items) item.checked = false
    const entry = answer.added[answer.added.length - 1]
    const names = { signer: `${signer.name} (${signer.id})`, person: `${people.get(id) ?? id} (${id})` }
    await sayRecorded(page, said, fill(words.signOffDone, { ...names, entry: entry?.seq ?? '', hash: shortHash(entry?.hash) }))
    recorded()
  })

  return {
    show: (person) => learnerFields.show(person),
    know(known) {
      people = known
      for (const fields of [learnerFields, signerFields]) fields.know(known)
    },
  }
}

/** Whether there is a result that a sign-off can stand behind: the last one is no failure. */
function hasResult(records: readonly TrainingRecord[], person: string, { lesson, questions }: LessonSheet): boolean {
  const own = records.filter(isLessonRecord).filter((it) => it.lesson === lesson && it.person === person)
  const results = own.filter(
    ({ event }) => ['passed', 'failed', 'revoked', 'completed'].includes(event) && (event !== 'completed' || questions.length === 0),
  )
  const last = results[results.length - 1]
  return last !== undefined && last.event !== 'failed' && last.event !== 'revoked'
}
