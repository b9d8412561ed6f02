import type { LessonSheet } from '../../training/lesson-sheet.ts'
import type { LearningWords } from '../../words/learning.ts'
import { required } from '../dom.ts'
import type { Office } from './report-to/office.ts'
import { startQuestions } from './start-questions.ts'

/** The end of a lesson in a package: the questions tell the training system what came of them. Nobody is asked who they are, and nothing is recorded here. */
export function startInOffice(root: HTMLElement, office: Office, words: LearningWords): void {
  const sheet: LessonSheet = JSON.parse(required(root, '[data-lesson-sheet]').textContent ?? '')
  const questions = root.querySelector<HTMLElement>('[data-quiz]')
  const startedMs = performance.now()
  if (!questions) return
  startQuestions(questions, sheet, words, (outcome) => {
    if (!outcome) return
    const { right, of, passed } = outcome
    void office.report(sheet.lesson, { completed: true, passed, score: { right, of }, durationS: (performance.now() - startedMs) / 1000 })
  })
}
