import { compare, comparePlaces, type Place } from './place.ts'

export type Severity = 'error' | 'warning' | 'note'

/** What a rule or a loader reports. The engine adds the severity and, for a rule, its id. */
export interface Problem {
  /** What is wrong, in one line that stands alone: lower case, no full stop, names in backticks. */
  message: string
  place: Place
  /** Other places that explain the problem, for example where a tag was first used. */
  related?: { label: string; place: Place }[]
  /** A fact the reader lacks. */
  note?: string
  /** What to do about it. Advice goes here and nowhere else. */
  help?: string
}

export interface Finding extends Problem {
  /** Kebab case, states the bad thing, reads well after "allow": `unknown-tag`. Permanent. */
  rule: string
  severity: Severity
}

/** The texts of a rule that `fettle explain` prints. */
export interface RuleTexts {
  id: string
  severity: Severity
  summary: string
  /** Why the reader of the manual is worse off. */
  why: string
  /** The clause, drawing standard or decision the rule comes from, or `house rule`. */
  source: string
  /**
   * Why it can be neither lowered nor accepted. `people`: what it finds can hurt someone. `build`: while it is
   * found something is left out or leads nowhere, so the manual cannot be made whole.
   */
  guards?: 'people' | 'build'
  /** What it finds is how a sentence is written, and not what it says. */
  concerns?: 'wording'
}

/** The one order of findings: file, line, column, rule, message, in code units. */
export function compareFindings(a: Finding, b: Finding): number {
  return comparePlaces(a.place, b.place) || compare(a.rule, b.rule) || compare(a.message, b.message)
}
