import { isRight, passes } from '../../../training/quiz.ts'
import type { LessonSheet } from '../../training/lesson-sheet.ts'
import type { LearningWords } from '../../words/learning.ts'
import { required } from '../dom.ts'
import { keepAnswers, keptAnswers } from './kept-answers.ts'
import { answeredNodes, keptNote, outcomeNodes, type QuizOutcome, questionNodes, rightOf } from './question-nodes.ts'

export interface Quiz {
  /** Begins again, as after a result that was recorded. */
  reset(): void
}

/** One question after the other; a reload goes on where it stopped. `show` gets the outcome once all are answered, undefined before. */
export function startQuestions(root: HTMLElement, sheet: LessonSheet, words: LearningWords, show: (outcome: QuizOutcome | undefined) => void): Quiz {
  const { questions, passPercent } = sheet
  const live = required<HTMLElement>(root, '[data-quiz-live]')
  const before = keptAnswers(sheet)
  let { answers } = before
  const set = (next: typeof answers) => {
    answers = next
    keepAnswers(sheet, answers)
  }
  const place = (nodes: readonly HTMLElement[], focus: string | undefined) => {
    live.replaceChildren(...nodes)
    if (focus) live.querySelector<HTMLElement>(focus)?.focus({ preventScroll: true })
    if (focus) live.scrollIntoView({ block: 'start' })
  }
  const ask = (focus?: string) => {
    const question = questions[answers.length]
    if (!question) return end(focus && '.quiz-verdict')
    show(undefined)
    const asked = { question, number: answers.length + 1, count: questions.length, words }
    const nodes = questionNodes(asked, (chosen) => {
      set([...answers, chosen])
      place(
        answeredNodes(asked, chosen, () => ask('input')),
        '.quiz-verdict',
      )
    })
    place(nodes, focus)
  }
  const end = (focus?: string) => {
    const missed = questions.filter((question, index) => !isRight(rightOf(question), answers[index] ?? []))
    const score = { right: questions.length - missed.length, of: questions.length }
    const outcome = { ...score, passed: passes(score, passPercent) }
    place(outcomeNodes(outcome, missed, words, passPercent, again), focus)
    show(outcome)
  }
  const again = () => {
    set([])
    ask('input')
  }
  required<HTMLElement>(root, '[data-quiz-all]').classList.add('on-paper')
  live.hidden = false
  ask()
  if (answers.length > 0 && before.atMs !== undefined) live.prepend(keptNote(words, before.atMs, again))
  return {
    reset() {
      set([])
    },
  }
}
