import { isRight } from '../../../training/quiz.ts'
import type { SheetQuestion } from '../../training/lesson-sheet.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import { element } from '../dom.ts'

export const rightOf = ({ answers }: SheetQuestion): number[] => answers.flatMap(({ right }, index) => (right ? [index] : []))

const button = (text: string, act: () => void, className = 'act-main') => {
  const made = element('button', { text, className })
  made.setAttribute('type', 'button')
  made.addEventListener('click', act)
  return made
}

interface Asked {
  readonly question: SheetQuestion
  readonly number: number
  readonly count: number
  readonly words: LearningWords
}

const headOf = ({ question, number, count, words }: Asked) => [
  element('p', { className: 'quiz-number', text: fill(words.quizOf, { number, count }) }),
  element('legend', { className: 'quiz-ask', text: question.ask }),
  ...(question.several ? [element('p', { className: 'hint', text: words.quizSeveral })] : []),
]

/** A question to answer. `answer` gets the places of the chosen answers, one or more. */
export function questionNodes(asked: Asked, answer: (chosen: number[]) => void): HTMLElement[] {
  const { question, number, words } = asked
  const inputs = question.answers.map((_, index) => {
    const input = document.createElement('input')
    input.type = question.several ? 'checkbox' : 'radio'
    input.name = `question-${number}`
    input.value = String(index)
    return input
  })
  const choices = question.answers.map(({ text }, index) => {
    const label = element('label', { className: 'quiz-choice' }, ...[inputs[index]].flatMap((it) => it ?? []), element('span', { text }))
    return label
  })
  const wrong = element('p', { className: 'field-wrong' })
  wrong.setAttribute('role', 'alert')
  const act = () => {
    const chosen = inputs.flatMap(({ checked }, index) => (checked ? [index] : []))
    if (chosen.length > 0) answer(chosen)
    else wrong.textContent = words.quizChoose
  }
  const [numberLine, ...head] = headOf(asked)
  return [
    ...(numberLine ? [numberLine] : []),
    element('fieldset', { className: 'quiz-question' }, ...head, ...choices),
    wrong,
    button(words.quizAnswer, act),
  ]
}

/** An answered question: what was right, what was chosen, and the reason of each answer. */
export function answeredNodes(asked: Asked, chosen: readonly number[], goOn: () => void): HTMLElement[] {
  const { question, number, count, words } = asked
  const verdict = element('p', { className: 'quiz-verdict', text: isRight(rightOf(question), chosen) ? words.quizRight : words.quizWrong })
  verdict.tabIndex = -1
  const answers = question.answers.map(({ text, right, because }, index) => {
    const marks = [right ? words.quizRightAnswer : words.quizWrongAnswer, ...(chosen.includes(index) ? [words.quizChosen] : [])]
    const item = element(
      'li',
      { className: 'quiz-choice quiz-answered' },
      element('span', { className: 'quiz-mark', text: marks.join(', ') }),
      element('span', { className: 'quiz-text', text }),
      ...(because === undefined ? [] : [element('span', { className: 'quiz-because', text: because })]),
    )
    item.dataset.right = String(right)
    item.dataset.chosen = String(chosen.includes(index))
    return item
  })
  const ask = element('p', { className: 'quiz-ask', text: question.ask })
  const numberLine = element('p', { className: 'quiz-number', text: fill(words.quizOf, { number, count }) })
  return [
    numberLine,
    ask,
    verdict,
    element('ul', { className: 'quiz-reasons-shown' }, ...answers),
    button(number < count ? words.quizNext : words.quizEnd, goOn),
  ]
}

export interface QuizOutcome {
  readonly right: number
  readonly of: number
  readonly passed: boolean
}

/** What all answers together are, and which questions to look at again. */
export function outcomeNodes(
  { right, of, passed }: QuizOutcome,
  missed: readonly SheetQuestion[],
  words: LearningWords,
  percent: number,
  again: () => void,
): HTMLElement[] {
  const head = element('p', { className: 'quiz-verdict', text: passed ? words.quizPassed : words.quizFailed })
  head.tabIndex = -1
  const list = missed.map(({ ask }) => element('li', { text: ask }))
  const look = [element('p', { className: 'hint', text: words.quizLookAgain }), element('ul', { className: 'quiz-missed' }, ...list)]
  return [
    head,
    element('p', { text: fill(words.quizResult, { right, count: of, percent }) }),
    ...(missed.length > 0 ? look : []),
    button(words.quizRepeat, again, 'quiz-again'),
  ]
}

/** Says that the answers before this question were given earlier, perhaps by somebody else, and lets them go. */
export function keptNote(words: LearningWords, atMs: number, again: () => void): HTMLElement {
  const when = new Date(atMs).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' })
  return element(
    'div',
    { className: 'quiz-kept' },
    element('p', { text: fill(words.quizKept, { when }) }),
    button(words.quizAnew, again, 'quiz-again'),
  )
}
