import { namesOf, type TrainingRecord } from './record.ts'
import { type Status, statusOf } from './status.ts'
import type { TaughtLesson } from './taught-lesson.ts'

/** A lesson as a certificate states it: when it was taken, in which revision, and who signed it off. */
export interface CertifiedLesson {
  readonly lesson: string
  readonly revision: string
  readonly date: string
  readonly by?: string
  /** The first day on which it no longer holds. */
  readonly ends?: string
}

export interface Certified {
  readonly person: string
  readonly name: string
  readonly lessons: readonly CertifiedLesson[]
}

/** Why a person is on no certificate: no name, or lessons that do not hold. A lesson that was waived was not taught. */
export interface NotCertified {
  readonly person: string
  readonly name?: string
  readonly lessons: readonly { readonly lesson: string; readonly status: Exclude<Status, 'ok'> | 'waived'; readonly ends?: string }[]
}

export interface CertificateQuestion {
  /** The lessons that the certificate is about. */
  readonly lessons: readonly TaughtLesson[]
  readonly people: readonly string[]
  readonly records: readonly TrainingRecord[]
  readonly today: string
}

/**
 * Who can be certified today, with names and dates as 29 CFR 1910.147(c)(7)(iv) asks (from memory), and who cannot, and why:
 * every lesson has to hold. Nobody is certified for no lesson.
 */
export function certificateOf({ lessons, people, records, today }: CertificateQuestion): { certified: Certified[]; refused: NotCertified[] } {
  const names = namesOf(records)
  const [certified, refused]: [Certified[], NotCertified[]] = [[], []]
  for (const person of people) {
    const name = names.get(person)
    const found = lessons.map((lesson) => ({ lesson: lesson.id, ...statusOf({ lesson, records, person, today }) }))
    const open = found.flatMap(({ lesson, status, record, ends }): NotCertified['lessons'] => {
      const until = ends === undefined ? {} : { ends }
      if (status !== 'ok') return [{ lesson, status, ...until }]
      return record?.event === 'waived' ? [{ lesson, status: 'waived', ...until }] : []
    })
    const held = found.flatMap(({ lesson, record, signOff, ends }): CertifiedLesson[] =>
      record
        ? [
            {
              lesson,
              revision: record.revision,
              date: record.date,
              ...(signOff?.by === undefined ? {} : { by: signOff.by }),
              ...(ends === undefined ? {} : { ends }),
            },
          ]
        : [],
    )
    if (name === undefined || open.length > 0 || lessons.length === 0)
      refused.push({ person, ...(name === undefined ? {} : { name }), lessons: open })
    else certified.push({ person, name, lessons: held })
  }
  return { certified, refused }
}
