import type { TaughtLesson } from '../../training/taught-lesson.ts'

/** A lesson on the page of a path, for the script as well: plain data. */
export interface ShownLesson {
  taught: TaughtLesson
  title: string
  /** Language of the title, where it is another than that of the page. */
  lang?: string
  href: string
  minutes: number
  needs: readonly string[]
  needsSignedOff: readonly string[]
}
