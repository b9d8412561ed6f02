import type { Page } from './machine.ts'

/** Share of right answers from which a lesson is passed, in percent: all of them where it names none. Undefined where it asks nothing. */
export function passMark({ frontmatter: { questions, passPercent } }: Page<'lessons'>): number | undefined {
  return questions ? (passPercent ?? 100) : undefined
}
