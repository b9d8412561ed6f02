import type { Place } from '../source/place.ts'
import type { Sink } from './load-rules.ts'

/** A sink that passes everything on, and knows where the first error of those that it saw stands. */
export function noteFirstError(sink: Sink): { sink: Sink; place(): Place | undefined } {
  let first: Place | undefined
  return {
    sink(rule, problem) {
      if (rule.severity === 'error') first ??= problem.place
      sink(rule, problem)
    },
    place: () => first,
  }
}
