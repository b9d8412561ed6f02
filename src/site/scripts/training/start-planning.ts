import type { Entry } from '../../../training/journal.ts'
import { sessionsOf } from '../../../training/sessions.ts'
import { type LessonStatus, statusOf } from '../../../training/status.ts'
import type { Weekday } from '../../../training/teaching-days.ts'
import type { PlanningRole, PlanningSheet } from '../../training/planning-sheet.ts'
import { fill } from '../../words/fill.ts'
import { type PlanningWords, planningWords } from '../../words/planning.ts'
import { element, required } from '../dom.ts'
import { certificateNodes } from './certificate-nodes.ts'
import { daysOf } from './plan-days.ts'
import { type PlannedRole, planNodes } from './plan-nodes.ts'
import { startPapers } from './print-papers.ts'
import { sayFault } from './said.ts'
import { signOffNodes } from './sign-off-sheet.ts'
import { skillsNodes } from './skills-nodes.ts'
import { tickNodes } from './tick-nodes.ts'
import { knownPeople, type TrainingPage, today } from './training-page.ts'

/** A plan of more lessons may take a second on a panel: what was touched is shown before it. */
const quickLessons = 20

/** The trainer's page: what is chosen and ticked becomes a plan, and the plan its papers. */
export function startPlanning(root: HTMLElement, page: TrainingPage): void {
  const own = planningWords(document.documentElement.lang)
  if (!own) return
  const words: PlanningWords & TrainingPage['words'] = { ...page.words, ...own }
  const sheet: PlanningSheet = JSON.parse(required(document, '[data-planning-sheet]').textContent ?? '')
  const part = <E extends HTMLElement>(name: string) => required<E>(root, `[data-${name}]`)
  const [person, minutes, first] = [
    part<HTMLSelectElement>('plan-person'),
    part<HTMLInputElement>('plan-minutes'),
    part<HTMLInputElement>('plan-first'),
  ]
  let entries: readonly Entry[] = []
  /** What was ticked or unticked by hand, for the role and person that are chosen. */
  let byHand = new Map<string, boolean>()
  let planning: number | undefined

  const roleChosen = (): PlanningRole | undefined => {
    const id = root.querySelector<HTMLInputElement>('[data-plan-role]:checked')?.value
    return sheet.roles.find((role) => role.id === id)
  }
  const weekdays = () => [...root.querySelectorAll<HTMLInputElement>('[data-plan-weekday]:checked')].map(({ value }) => Number(value) as Weekday)
  const records = () => entries.map(({ body }) => body)

  const show = () => {
    const role = roleChosen()
    if (!role) return
    const people = knownPeople(records())
    const asked = role.asked.flatMap(({ lesson, why }) => {
      const found = sheet.lessons.find(({ taught }) => taught.id === lesson)
      return found ? [{ ...found, why }] : []
    })
    const statuses = new Map<string, LessonStatus>(
      person.value === ''
        ? []
        : asked.map(({ taught }) => [taught.id, statusOf({ lesson: taught, records: records(), person: person.value, today: today() })]),
    )
    const isDone = (id: string) => byHand.get(id) ?? statuses.get(id)?.status === 'ok'
    const open = asked.filter(({ taught }) => !isDone(taught.id))
    const tick = (id: string, done: boolean) => {
      byHand.set(id, done)
      show()
    }
    const ticks = part('plan-lessons')
    const focused = ticks.contains(document.activeElement) ? (document.activeElement as HTMLInputElement).value : undefined
    ticks.replaceChildren(...tickNodes({ asked, isDone, statuses, words, tick }))
    if (focused !== undefined) ticks.querySelector<HTMLElement>(`input[value="${focused}"]`)?.focus()
    part('plan-open').textContent = fill(words.planOpenCount, { open: open.length, all: asked.length })
    part('plan-weekdays').hidden = first.value === ''

    const limit = Number(minutes.value)
    const isLimit = Number.isInteger(limit) && limit >= 1 && limit <= 999
    minutes.setAttribute('aria-invalid', String(!isLimit))
    const result = part('plan-result')
    const signOff = part('plan-sheet')
    if (!isLimit) {
      result.replaceChildren(element('p', { className: 'said-fault', text: words.planNoMinutes }))
      signOff.replaceChildren()
    }
    const makePlan = () => {
      const limits = { ...sheet.limits, minutes: limit }
      const plan = sessionsOf(
        open.map(({ taught, ...lesson }) => ({ id: taught.id, ...lesson })),
        limits,
      )
      const name = person.value === '' ? undefined : (people.get(person.value) ?? person.value)
      const planned: PlannedRole = {
        role,
        asked,
        plan,
        limits,
        person: name === undefined ? undefined : { id: person.value, name },
        days: 'sessions' in plan ? daysOf(plan.sessions, first.value, weekdays()) : [],
        words,
      }
      result.replaceChildren(...planNodes(planned))
      signOff.replaceChildren(...signOffNodes(planned, entries))
    }
    window.clearTimeout(planning)
    if (isLimit && open.length <= quickLessons) makePlan()
    else if (isLimit) {
      result.replaceChildren(element('p', { text: words.planWorking }))
      signOff.replaceChildren()
      planning = window.setTimeout(makePlan, 50)
    }
    part('plan-certificate').replaceChildren(
      ...certificateNodes({
        lessons: asked.filter(({ isLockout }) => isLockout),
        people,
        records: records(),
        words,
        show: (canPrint) => {
          required<HTMLButtonElement>(root, '[data-print-paper="certificate"]').disabled = !canPrint
        },
      }),
    )
    const matrix = root.querySelector('[data-plan-matrix]')
    matrix?.replaceChildren(...skillsNodes({ sheet, role, people, records: records(), words }))
  }

  const refresh = async () => {
    const answer = await page.store.entries()
    const said = part('said')
    said.replaceChildren()
    if ('fault' in answer) await sayFault(page, said, answer.fault)
    entries = 'fault' in answer ? [] : answer.entries
    const [people, before] = [knownPeople(records()), person.value]
    const options = [...people].map(([id, name]) => new Option(name === id ? id : `${name} (${id})`, id))
    person.replaceChildren(new Option(words.planWhoNobody, ''), ...options)
    person.value = people.has(before) ? before : ''
    part('plan-who').hidden = people.size === 0
    show()
  }

  root.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLElement) || target.closest('[data-plan-lessons], [data-plan-certificate]')) return
    if (target.matches('[data-plan-role], [data-plan-person]')) byHand = new Map()
    show()
  })
  minutes.addEventListener('input', show)
  for (const button of root.querySelectorAll<HTMLElement>('[data-plan-step]')) {
    button.addEventListener('click', () => {
      const step = Number(button.dataset.planStep)
      minutes.value = String(Math.min(999, Math.max(5, Math.round(Number(minutes.value) / 5) * 5 + step)))
      show()
    })
  }
  startPapers(root)
  page.store.onChange(() => void refresh())
  document.addEventListener('records-changed', () => void refresh())
  // Shown when it is whole: what comes into an empty page would move the rest away under a finger.
  void refresh().then(() => {
    root.hidden = false
    required<HTMLElement>(document, '[data-plan-hint]').hidden = false
    required<HTMLElement>(document, '[data-plan-lists]').hidden = true
  })
}
