import type { Problem, RuleTexts } from '../source/finding.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'

/**
 * Gives what a reader makes of a text, and reports what it finds in it. `what` names the reader and everything
 * besides the text that its result depends on.
 */
export type Memory = <T>(what: string, source: SourceText, sink: Sink, read: (sink: Sink) => T) => T

/** Reads each time: for a process that reads a folder once. */
export const noMemory: Memory = (_what, _source, sink, read) => read(sink)

/** Reads a text again only when it has changed: for a process that reads one folder again and again. */
export function textMemory(): Memory {
  const kept = new Map<string, { text: string; value: unknown; found: readonly [RuleTexts, Problem][] }>()
  return <T>(what: string, source: SourceText, sink: Sink, read: (sink: Sink) => T): T => {
    const key = `${what} ${source.file}`
    const known = kept.get(key)
    if (known?.text === source.text) {
      for (const [rule, problem] of known.found) sink(rule, problem)
      // The key names the reader, and a reader gives one type.
      return known.value as T
    }
    const found: [RuleTexts, Problem][] = []
    const value = read((rule, problem) => {
      found.push([rule, problem])
      sink(rule, problem)
    })
    kept.set(key, { text: source.text, value, found })
    return value
  }
}
