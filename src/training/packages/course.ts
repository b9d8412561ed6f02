/** What an office training system is given: lessons in the order in which they are taught, with their files. */
export interface Course {
  /** Stays the same from release to release: the system knows by it that a package renews an earlier one. */
  id: string
  title: string
  /** Never empty. */
  description: string
  /** RFC 5646. */
  language: string
  lessons: readonly CourseLesson[]
  /** Every file of the package but its manifest: paths with forward slashes. */
  files: readonly string[]
}

export interface CourseLesson {
  id: string
  title: string
  /** Never empty. */
  description: string
  /** The file that the system opens. */
  launch: string
  /** Share of right answers from which the lesson is passed, 0 to 100; undefined where it asks nothing. */
  passPercent?: number | undefined
}
