import type { LessonResult } from '../../../../training/packages/result.ts'
import type { Told } from './office-system.ts'

/** What the launch page of a package offers to the lesson in its frame. */
export interface Office {
  /** Answers to questions by lesson, until the lesson is closed: a page that is opened again goes on with them, and no one else finds them. */
  answers: Map<string, string>
  /** `lesson`: its id. A result of another lesson than the one that was opened is not told. */
  report(lesson: string, result: LessonResult): Promise<Told>
}

const property = 'fettleOffice'

export function offerOffice(page: Window, office: Office): void {
  Reflect.set(page, property, office)
}

/**
 * The office around a lesson that is part of a package; undefined where the page stands for itself. A lesson with an
 * office tells it its result and asks nobody who they are: the training system knows the learner.
 */
export function officeAround(page: Window): Office | undefined {
  try {
    const found: unknown = page.parent === page ? undefined : Reflect.get(page.parent, property)
    return isOffice(found) ? found : undefined
  } catch {
    return undefined // the frame around is of someone else
  }
}

function isOffice(value: unknown): value is Office {
  return typeof value === 'object' && value !== null && typeof Reflect.get(value, 'report') === 'function'
}
