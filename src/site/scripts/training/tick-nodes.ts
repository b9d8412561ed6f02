import type { LessonStatus } from '../../../training/status.ts'
import type { PlanningLesson } from '../../training/planning-sheet.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import type { PlanningWords } from '../../words/planning.ts'
import { element } from '../dom.ts'
import { statusText } from './said.ts'

interface Ticks {
  asked: readonly PlanningLesson[]
  isDone(id: string): boolean
  /** Empty where nobody is chosen. */
  statuses: ReadonlyMap<string, LessonStatus>
  words: PlanningWords & LearningWords
  tick(id: string, done: boolean): void
}

/** A row a lesson: a box for done, and what a trainer wants to know before planning it. */
export function tickNodes({ asked, isDone, statuses, words, tick }: Ticks): HTMLElement[] {
  return asked.map(({ taught, title, lang, minutes, mode, level, reading }) => {
    const box = document.createElement('input')
    box.type = 'checkbox'
    box.value = taught.id
    box.checked = isDone(taught.id)
    box.addEventListener('change', () => tick(taught.id, box.checked))
    const facts = [
      fill(words.planMinutesShort, { minutes }),
      ...(mode ? [words[`mode_${mode}`]] : []),
      ...(level === undefined ? [] : [fill(words.planLevelOf, { level })]),
      ...(reading ? [reading] : []),
    ]
    const status = statuses.get(taught.id)
    const said = status ? [element('b', { className: 'plan-status', text: statusText(words, status) })] : []
    const text = element(
      'span',
      { className: 'row-main' },
      element('span', { text: title, ...(lang ? { lang } : {}) }),
      element('small', { text: facts.join(' · ') }),
    )
    return element('li', {}, element('label', { className: 'plan-tick' }, box, text, ...said))
  })
}
