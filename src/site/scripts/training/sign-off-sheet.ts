import type { Entry } from '../../../training/journal.ts'
import { fill } from '../../words/fill.ts'
import { element } from '../dom.ts'
import { type PlannedRole, sessionText } from './plan-nodes.ts'
import { tableNode } from './table-node.ts'

/** The lessons of a plan with lines to sign, and the hash up to which the records on this device went. */
export function signOffNodes({ role, asked, plan, person, days, words }: PlannedRole, entries: readonly Entry[]): HTMLElement[] {
  if (!('sessions' in plan) || plan.sessions.length === 0) return []
  const line = (label: string, value?: string) =>
    element(
      'p',
      { className: 'paper-line' },
      element('span', { text: label }),
      element('b', value === undefined ? { className: 'paper-blank' } : { text: value }),
    )
  const last = entries[entries.length - 1]
  const hash = last
    ? [
        element('span', { text: `${fill(words.sheetHead, { count: entries.length })} ` }),
        element('span', { className: 'mono paper-hash', text: last.hash }),
      ]
    : [element('span', { text: words.sheetNoHead })]
  return [
    element('h2', { text: fill(words.sheetTitle, { role: role.name }) }),
    element('div', { className: 'paper-lines' }, line(words.sheetLearner, person?.name), line(words.sheetId, person?.id), line(words.sheetTrainer)),
    ...plan.sessions.map((session, index) =>
      tableNode({
        caption: sessionText(session, index, days, words),
        headings: [words.sheetLesson, words.sheetDate, words.sheetLearnerSigns, words.sheetTrainerSigns],
        rows: session.lessons.flatMap((id) => {
          const lesson = asked.find(({ taught }) => taught.id === id)
          return lesson
            ? [[{ text: lesson.title, note: `${lesson.taught.id}, ${words.sheetRevision} ${lesson.taught.revision}`, lang: lesson.lang }, {}, {}, {}]]
            : []
        }),
      }),
    ),
    element('p', {}, ...hash),
    element('p', { text: words.sheetEnter }),
  ]
}
