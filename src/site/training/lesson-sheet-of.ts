import type { Page } from '../../model/machine.ts'
import { passMark } from '../../model/pass-mark.ts'
import { contentHash, taughtLesson } from '../../model/taught-lesson.ts'
import type { LessonSheet, SheetQuestion } from './lesson-sheet.ts'

/** The questions of a lesson in a language. Words that are not translated stand in the language of the lesson: `isTranslated` says so. */
export function lessonSheetOf(page: Page<'lessons'>, language: string): { sheet: LessonSheet; isTranslated: boolean } {
  const { name, frontmatter } = page
  const { revision, questions = [], practical = [] } = frontmatter
  const translation = page.translations.get(language)?.frontmatter
  const said = translation?.questions
  // Words in another number than the questions and answers would stand at the wrong ones.
  const fits = said?.length === questions.length && questions.every((it, index) => it.answers.length === said[index]?.answers.length)
  const practicalWords = translation?.practical?.length === practical.length ? translation.practical : undefined
  const hash = contentHash(page)
  const asked = questions.map(({ ask, choose = 'one', answers }, index): SheetQuestion => {
    const words = fits ? said?.[index] : undefined
    return {
      ask: words?.ask ?? ask,
      several: choose === 'several',
      answers: answers.map(({ text, right = false, because }, n) => {
        const reason = words ? (words.answers[n]?.because ?? because) : because
        return { text: words?.answers[n]?.text ?? text, right, ...(reason === undefined ? {} : { because: reason }) }
      }),
    }
  })
  const isOwn = language === page.language
  return {
    sheet: {
      lesson: name,
      revision,
      ...(hash === undefined ? {} : { contentHash: hash }),
      passPercent: passMark(page) ?? 100,
      questions: asked,
      practical: practicalWords ?? practical,
      needsSignOff: taughtLesson(page).needsSignOff,
    },
    isTranslated: isOwn || ((questions.length === 0 || fits) && (practical.length === 0 || practicalWords !== undefined)),
  }
}
