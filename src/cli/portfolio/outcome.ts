/** What is told of a machine that was built, besides its place. */
export interface Told {
  model: string
  serial: string
  /** Pages of the site, in all languages. */
  pages: number
  checkValue: string
  errors: number
  warnings: number
  notes: number
}

/**
 * What became of a machine folder, with the exit code of its build. `refused`: it has errors; `not built`: nothing could be
 * written, or the process ended. What could not be read is absent.
 */
export type Outcome =
  | ({ state: 'built' | 'unchanged'; code: 0 } & Told)
  | ({ state: 'refused'; code: 1 } & Partial<Told>)
  | ({ state: 'not built'; code: 2 } & Partial<Told>)
