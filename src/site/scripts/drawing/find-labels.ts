import type { KeyLabels } from '../search/labels.ts'

/** What the search in a drawing and its keys say: JSON in `[data-find-labels]`. */
export interface FindLabels extends KeyLabels {
  /** `{at} of {count}`, and `{count} found` before one of them is shown. */
  count: string
  some: string
  nothing: string
  /** The texts cannot be loaded. */
  failed: string
  /** `Sheet {sheet}: {count}`. */
  onSheet: string
}
