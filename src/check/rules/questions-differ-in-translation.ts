import type { TranslatedText } from '../../model/machine.ts'
import type { Question } from '../../model/schema/training.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const questionsDifferInTranslation: Rule = {
  id: 'questions-differ-in-translation',
  severity: 'error',
  summary: 'A translation has other questions, answers or tasks than its source.',
  why: 'Which answer is right is said in the source alone: with one answer more or less, the wrong one would count as right.',
  source: 'house rule',

  *check(_, graph) {
    for (const { frontmatter, translations } of graph.pagesIn('lessons'))
      for (const translation of translations.values()) {
        const { questions, practical } = translation.frontmatter
        if (questions) yield* unlikeQuestions(translation, frontmatter.questions ?? [])
        if (practical && practical.length !== (frontmatter.practical ?? []).length)
          yield {
            message: `the translation has ${count(practical.length, 'task')}, and its source ${frontmatter.practical?.length ?? 0}`,
            place: translation.placeOf(['practical']),
            help: 'give each task of the source its translation, in the same order',
          }
      }
  },
}

function* unlikeQuestions({ frontmatter: { questions = [] }, placeOf }: TranslatedText, source: readonly Question[]): Iterable<Problem> {
  if (questions.length !== source.length) {
    yield {
      message: `the translation has ${count(questions.length, 'question')}, and its source ${source.length}`,
      place: placeOf(['questions']),
      help: 'give each question of the source its translation, in the same order',
    }
    return
  }
  for (const [index, { answers }] of questions.entries()) {
    const inSource = source[index]?.answers.length ?? 0
    if (answers.length === inSource) continue
    yield {
      message: `the question has ${count(answers.length, 'answer')}, and its source ${inSource}`,
      place: placeOf(['questions', index, 'answers']),
      help: 'give each answer of the source its translation, in the same order',
    }
  }
}

const count = (number: number, noun: string) => `${number} ${noun}${number === 1 ? '' : 's'}`
