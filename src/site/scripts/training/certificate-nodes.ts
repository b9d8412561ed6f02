import { certificateOf, type NotCertified } from '../../../training/certificate.ts'
import type { TrainingRecord } from '../../../training/record.ts'
import type { PlanningLesson } from '../../training/planning-sheet.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import type { PlanningWords } from '../../words/planning.ts'
import { element } from '../dom.ts'
import { tableNode } from './table-node.ts'
import { dayText, today } from './training-page.ts'

interface Certificate {
  /** Lessons of the role that serve a duty of lockout. */
  lessons: readonly PlanningLesson[]
  people: ReadonlyMap<string, string>
  records: readonly TrainingRecord[]
  words: PlanningWords & LearningWords
  /** Told whether there is somebody to certify. */
  show(canPrint: boolean): void
}

/** The certificate of 29 CFR 1910.147(c)(7)(iv) for all for whom every lesson holds; who is not on it, and why, beside it. */
export function certificateNodes({ lessons, people, records, words, show }: Certificate): HTMLElement[] {
  const titles = new Map(lessons.map(({ taught, title }) => [taught.id, title]))
  const taught = lessons.map((lesson) => lesson.taught)
  const { certified, refused } = certificateOf({ lessons: taught, people: [...people.keys()], records, today: today() })
  show(certified.length > 0)
  if (lessons.length === 0) return [element('p', { className: 'hint', text: words.certificateNone })]
  const hint = element('p', { className: 'hint not-on-paper', text: fill(words.certificateHint, { lessons: [...titles.values()].join(', ') }) })
  const rows = certified.flatMap(({ person, name, lessons: held }) =>
    held.map(({ lesson, revision, date, by, ends }) => [
      { text: name, note: person },
      { text: titles.get(lesson) ?? lesson, note: lesson },
      { text: revision, className: 'mono' },
      { text: dayText(date) },
      { text: by === undefined ? '' : (people.get(by) ?? by), note: by !== undefined && people.has(by) && people.get(by) !== by ? by : undefined },
      { text: ends === undefined ? '' : dayText(ends) },
    ]),
  )
  const headings = [
    words.certificateEmployee,
    words.sheetLesson,
    words.sheetRevision,
    words.sheetDate,
    words.certificateSigned,
    words.certificateUntil,
  ]
  const line = (label: string) =>
    element('p', { className: 'paper-line' }, element('span', { text: label }), element('b', { className: 'paper-blank' }))
  const paper =
    certified.length === 0
      ? [element('p', { text: words.certificateNobody })]
      : [
          element('p', { text: words.certificateText }),
          tableNode({ headings, rows }),
          element(
            'div',
            { className: 'paper-lines on-paper' },
            line(words.certificateEmployer),
            line(words.certificateSignature),
            line(words.sheetDate),
          ),
          element('p', { className: 'hint', text: words.certificateDefer }),
        ]
  return [hint, ...paper, ...refusedNodes(refused, titles, people, words)]
}

function refusedNodes(
  refused: readonly NotCertified[],
  titles: ReadonlyMap<string, string>,
  people: ReadonlyMap<string, string>,
  words: Certificate['words'],
): HTMLElement[] {
  if (refused.length === 0) return []
  const why = ({ name, lessons }: NotCertified) => [
    ...(name === undefined ? [words.certificateNoName] : []),
    ...lessons.map(({ lesson, status, ends }) => {
      const said = status === 'waived' ? words.certificateWaived : fill(words[`status_${status}`], { ends: ends === undefined ? '' : dayText(ends) })
      return `${titles.get(lesson) ?? lesson}: ${said}`
    }),
  ]
  return [
    element('h3', { className: 'not-on-paper', text: words.certificateRefused }),
    element(
      'ul',
      { className: 'plain not-on-paper' },
      ...refused.map((it) => element('li', { text: `${people.get(it.person) ?? it.person} (${it.person}): ${why(it).join('; ')}` })),
    ),
  ]
}
