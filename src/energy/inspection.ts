/** A periodic inspection of a lockout procedure, as certified. Source: 29 CFR 1910.147(c)(6)(ii): four fields. */
export interface Inspection {
  /** Machine on which the procedure was used. */
  machine: string
  /** Date as `2026-03-14`. */
  date: string
  /** Employees included in the inspection. */
  employees: readonly string[]
  inspector: string
}

/** A date one year later as `2027-03-14`; 29 February gives 28 February. */
export function inspectionDue(date: string): string {
  const [year = '', month = '', day = ''] = date.split('-')
  const next = String(Number(year) + 1).padStart(4, '0')
  return `${next}-${month}-${month === '02' && day === '29' ? '28' : day}`
}

export interface InspectionFaults {
  /** The date until which the next one had to be done, where that is past. */
  overdueSince?: string
  /** The inspector is one of those who use the procedure. */
  inspectorUsesIt: boolean
  missing: readonly (keyof Inspection)[]
}

/** What is wrong with an inspection on a day, `2026-11-25`. Source: 29 CFR 1910.147(c)(6)(i), (i)(A) and (ii). */
export function inspectionFaults(inspection: Partial<Inspection>, users: readonly string[], today: string): InspectionFaults {
  const { machine, date, employees, inspector } = inspection
  const due = date ? inspectionDue(date) : undefined
  const missing = [
    ...(machine ? [] : (['machine'] as const)),
    ...(date ? [] : (['date'] as const)),
    ...(employees && employees.length > 0 ? [] : (['employees'] as const)),
    ...(inspector ? [] : (['inspector'] as const)),
  ]
  return {
    ...(due !== undefined && due < today ? { overdueSince: due } : {}),
    inspectorUsesIt: inspector !== undefined && users.includes(inspector),
    missing,
  }
}
