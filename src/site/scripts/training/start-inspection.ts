import { inspectionsOf } from '../../../training/inspection.ts'
import { isSamePerson } from '../../../training/person.ts'
import type { InspectionRecord } from '../../../training/record.ts'
import { fill } from '../../words/fill.ts'
import { required } from '../dom.ts'
import { offerPeople, personFields } from './person-fields.ts'
import { withNames } from './record-for.ts'
import { say, sayFault, sayRecorded, shortHash } from './said.ts'
import { dayText, knownPeople, recordsOf, spelledAs, type TrainingPage, today } from './training-page.ts'

/** The periodic inspection of a lockout procedure: its last one on this device, when the next is due, and the record of one. */
export function startInspection(root: HTMLElement, page: TrainingPage): void {
  const { words, store } = page
  const procedure = root.dataset.inspection ?? ''
  const field = (name: string) => required<HTMLInputElement>(root, `[data-inspection-${name}]`)
  const said = required<HTMLElement>(root, '[data-said]')
  const inspector = personFields(root, 'inspector', page)
  let people: ReadonlyMap<string, string> = new Map()
  const idsIn = (name: string) =>
    [
      ...new Set(
        field(name)
          .value.split(/[,;]/)
          .flatMap((id) => id.trim() || []),
      ),
    ].map((id) => spelledAs(id, people))

  const refresh = async () => {
    const records = await recordsOf(page)
    people = knownPeople(records)
    inspector.know(people)
    offerPeople(root, people)
    // Whoever recorded it has said that the inspector was authorised.
    const [found] = inspectionsOf({ procedures: [procedure], records, today: today(), isAuthorised: () => true })
    const { last, due, status } = found ?? {}
    const by = last && (people.get(last.by) ?? last.by)
    const values = { date: last ? dayText(last.date) : '', due: due ? dayText(due) : '', by: by ?? '' }
    required(root, '[data-inspection-status]').textContent = fill(
      last ? (status === 'due' ? words.inspectDue : words.inspectOk) : words.inspectNever,
      values,
    )
  }

  required(root, '[data-inspection-form]').addEventListener('submit', async (event) => {
    event.preventDefault()
    const by = inspector.read()
    if (!by) return
    const [included, retrain, reason] = [idsIn('people'), idsIn('retrain'), field('reason').value.trim()]
    const wrong = [
      [!field('authorised').checked, words.inspectNotAuthorised],
      [included.length === 0, words.inspectNobody],
      [included.some((id) => isSamePerson(id, by.id)), words.inspectSame],
      [retrain.some((id) => !included.includes(id)), words.inspectNotIncluded],
      [retrain.length > 0 && reason === '', words.inspectNoReason],
    ] as const
    const [first] = wrong.filter(([is]) => is)
    if (first) return say(said, first[1], [], true)
    const record: InspectionRecord = {
      event: 'inspected',
      procedure,
      ...(root.dataset.revision ? { revision: root.dataset.revision } : {}),
      people: included,
      by: by.id,
      date: today(),
      ...(retrain.length > 0 ? { retrain } : {}),
      ...(reason === '' ? {} : { reason }),
    }
    const records = await withNames(page, [by], record)
    const answer = await store.append(...records)
    if ('fault' in answer) return sayFault(page, said, answer.fault, records)
    for (const name of ['people', 'retrain', 'reason']) field(name).value = ''
    field('authorised').checked = false
    const entry = answer.added[answer.added.length - 1]
    await sayRecorded(page, said, fill(words.inspectDone, { entry: entry?.seq ?? '', hash: shortHash(entry?.hash) }))
    await refresh()
  })
  store.onChange(() => void refresh())
  root.hidden = false
  void refresh()
}
