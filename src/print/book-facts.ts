/** What a printed manual says of itself, each as text in its language. */
export interface BookFacts {
  language: string
  /** Language as it calls itself. */
  languageName: string
  name: string
  builder: string
  model: string
  serial: string
  document: string
  revision: string
  /** Date of the revision: `2026-09-14`. */
  date: string
  options: readonly string[]
  /** Original instructions, or a translation of them; undefined where machine.yaml does not say. */
  version: string | undefined
  /** Said of an invented machine, on every page. */
  demonstration: string | undefined
  checkValue: string
}

/** How the facts are called. */
export interface FactNames {
  builder: string
  model: string
  serial: string
  document: string
  revision: string
  date: string
  optionsFitted: string
  checkValue: string
}
