import { addMonths } from './months.ts'
import { isSamePerson } from './person.ts'
import type { InspectionRecord, TrainingRecord } from './record.ts'

/** Months from one periodic inspection to the next: at least once a year, 29 CFR 1910.147(c)(6)(i) (from memory). */
const inspectedEveryMonths = 12

export interface InspectionQuestion {
  /** The procedures to inspect, in their order. */
  readonly procedures: readonly string[]
  readonly records: readonly TrainingRecord[]
  readonly today: string
  /** Whether a person was authorised for lockout on a day. */
  isAuthorised(person: string, day: string): boolean
}

/** An inspection that does not count: by one of those who used the procedure, or by a person who was not authorised. */
export interface VoidInspection {
  readonly record: InspectionRecord
  readonly why: 'inspector-included' | 'inspector-not-authorised'
}

export interface InspectionStatus {
  readonly procedure: string
  readonly status: 'never' | 'due' | 'ok'
  /** The last one that counts. */
  readonly last?: InspectionRecord
  /** The day on which the next one is due; on that day it is due already. */
  readonly due?: string
  /** Those after it that do not count. */
  readonly void: readonly VoidInspection[]
}

/** Where each lockout procedure stands with its yearly inspection. */
export function inspectionsOf({ procedures, records, today, isAuthorised }: InspectionQuestion): InspectionStatus[] {
  const inspections = records
    .flatMap((record) => (record.event === 'inspected' && record.date <= today ? [record] : []))
    .sort((one, other) => (one.date < other.date ? -1 : Number(one.date > other.date)))
  const whyVoid = ({ by, people, date }: InspectionRecord): VoidInspection['why'] | undefined => {
    if (people.some((person) => isSamePerson(person, by))) return 'inspector-included'
    return isAuthorised(by, date) ? undefined : 'inspector-not-authorised'
  }
  return procedures.map((procedure) => {
    const own = inspections.filter((it) => it.procedure === procedure)
    const last = own.filter((it) => !whyVoid(it)).pop()
    const after = own.slice(last ? own.indexOf(last) + 1 : 0).flatMap((record) => {
      const why = whyVoid(record)
      return why ? [{ record, why }] : []
    })
    if (!last) return { procedure, status: 'never', void: after }
    const due = addMonths(last.date, inspectedEveryMonths)
    return { procedure, status: today >= due ? 'due' : 'ok', last, due, void: after }
  })
}
