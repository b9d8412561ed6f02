/** That a person has been trained for a lockout, as certified. Source: 29 CFR 1910.147(c)(7)(iv): name and dates. */
export interface TrainingRecord {
  employee: string
  /** Days as `2026-03-14`. */
  dates: readonly string[]
}

export interface TrainingFaults {
  /** Who has no record at all. */
  without: readonly string[]
  /** Records without a day, by their number in the list from 0. */
  undated: readonly number[]
  /** Records with a day that has not come yet, and that day. */
  ahead: readonly { record: number; date: string }[]
}

/** What is wrong with the training records of those who use a lockout, on a day as `2026-11-25`. Source: 29 CFR 1910.147(c)(7)(i)(A) and (iv). */
export function trainingFaults(records: readonly TrainingRecord[], users: readonly string[], today: string): TrainingFaults {
  const trained = new Set(records.map(({ employee }) => employee))
  return {
    without: users.filter((user) => !trained.has(user)),
    undated: records.flatMap(({ dates }, record) => (dates.length === 0 ? [record] : [])),
    ahead: records.flatMap(({ dates }, record) => dates.filter((date) => date > today).map((date) => ({ record, date }))),
  }
}

/**
 * Whether an inspection leaves out those who work near the lockout, without using it. Where a tag stands in place of
 * a lock, it takes them in as well. Source: 29 CFR 1910.147(c)(6)(i)(D).
 */
export const leavesOutAffected = (affected: readonly string[] | undefined, byTag: boolean): boolean => byTag && (affected ?? []).length === 0
