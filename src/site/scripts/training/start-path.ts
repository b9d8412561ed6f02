import { learningPath } from '../../../training/learning-path.ts'
import type { TrainingRecord } from '../../../training/record.ts'
import { statusOf } from '../../../training/status.ts'
import type { ShownLesson } from '../../training/shown-lesson.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import { element, required } from '../dom.ts'
import { lastLearner, rememberLearner } from './learner.ts'
import { sayFault, statusText } from './said.ts'
import { knownPeople, type TrainingPage, today } from './training-page.ts'

/** Shows on a path what holds for the person who is chosen, what comes next, and why. */
export function startPath(root: HTMLElement, page: TrainingPage): void {
  const { words, store } = page
  const lessons: ShownLesson[] = JSON.parse(required(document, '[data-path-sheet]').textContent ?? '')
  const choice = required<HTMLSelectElement>(root, '[data-path-person]')
  let records: readonly TrainingRecord[] = []

  const show = () => {
    const statuses = new Map(lessons.map(({ taught }) => [taught.id, statusOf({ lesson: taught, records, person: choice.value, today: today() })]))
    const isChosen = choice.value !== ''
    const path = learningPath(lessons.map(({ taught: { id }, ...it }) => ({ ...it, id, isDone: statuses.get(id)?.status === 'ok' })))
    const named = (ids: readonly string[]) =>
      lessons
        .filter(({ taught }) => ids.includes(taught.id))
        .map(({ title }) => title)
        .join(', ')
    for (const { id, state, missing } of path.steps) {
      const row = root.querySelector<HTMLElement>(`[data-path-lesson="${id}"]`)
      const place = row?.querySelector('[data-path-state]')
      if (!row || !place) continue
      row.classList.toggle('path-done', isChosen && state === 'done')
      row.classList.toggle('path-here', isChosen && id === path.next?.id)
      const found = statuses.get(id)
      const status = found ? statusText(words, found) : ''
      const before = named(needsIn(lessons, id))
      const waits = state === 'waits' ? `${status}. ${fill(words.pathWaits, { lessons: named(missing) })}` : status
      place.textContent = isChosen ? waits : before && fill(words.pathNeeds, { lessons: before })
      const last = statuses.get(id)?.record
      if (isChosen && last?.event === 'revoked') place.textContent += `. ${fill(words.pathTakenBack, { reason: last.reason ?? '' })}`
    }
    const done = path.steps.filter(({ state }) => state === 'done').length
    required(root, '[data-path-count]').textContent = isChosen ? fill(words.pathDoneOf, { done, count: path.steps.length }) : ''
    const box = required<HTMLElement>(root, '[data-path-next]')
    box.hidden = !isChosen
    if (isChosen) box.replaceChildren(...nextNodes(path.next, lessons, words, named))
  }
  const refresh = async () => {
    const answer = await store.entries()
    const said = required<HTMLElement>(root, '[data-said]')
    said.replaceChildren()
    if ('fault' in answer) await sayFault(page, said, answer.fault)
    records = 'fault' in answer ? [] : answer.entries.map(({ body }) => body)
    const people = knownPeople(records)
    const before = choice.value || lastLearner(page)?.id || ''
    const options = [...people].map(([id, name]) => new Option(name === id ? id : `${name} (${id})`, id))
    choice.replaceChildren(new Option(words.pathNobody, ''), ...options)
    choice.value = people.has(before) ? before : ''
    required<HTMLElement>(root, '[data-path-who]').hidden = people.size === 0
    show()
  }
  choice.addEventListener('change', () => {
    const name = knownPeople(records).get(choice.value)
    if (name !== undefined) rememberLearner(page, { id: choice.value, name })
    show()
  })
  store.onChange(() => void refresh())
  document.addEventListener('records-changed', () => void refresh())
  void refresh()
}

function needsIn(lessons: readonly ShownLesson[], id: string): string[] {
  const { needs = [], needsSignedOff = [] } = lessons.find(({ taught }) => taught.id === id) ?? {}
  return [...needsSignedOff, ...needs]
}

function nextNodes(
  next: ReturnType<typeof learningPath>['next'],
  lessons: readonly ShownLesson[],
  words: LearningWords,
  named: (ids: readonly string[]) => string,
): HTMLElement[] {
  const lesson = lessons.find(({ taught }) => taught.id === next?.id)
  if (!next || !lesson) return [element('p', { className: 'path-all', text: words.pathAllDone })]
  const link = element('a', { className: 'button act-main', text: words.pathOpen })
  link.setAttribute('href', lesson.href)
  const rest = next.after.length > 0 ? fill(words.pathAfter, { lessons: named(next.after) }) : words.pathNeedsNothing
  const why = next.neededBy.length > 0 ? fill(words.pathNeededBy, { lessons: named(next.neededBy) }) : words.pathAuthor
  return [
    element('p', { className: 'quiz-number', text: words.pathNext }),
    element('p', { className: 'path-title', text: lesson.title, ...(lesson.lang ? { lang: lesson.lang } : {}) }),
    element('p', { text: why }),
    element('p', { className: 'hint', text: rest }),
    link,
  ]
}
