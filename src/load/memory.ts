import type { Problem, RuleTexts } from '../source/finding.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'

/**
 * Gives what a reader makes of some values, and reports what it finds in them. `what` names the reader; `from` is
 * everything that its result depends on: texts, and values that nothing changes after they are made.
 */
export type Memory = <T>(what: string, from: readonly unknown[], sink: Sink, read: (sink: Sink) => T) => T

/** Reads each time: for a process that reads a folder once. */
export const noMemory: Memory = (_what, _from, sink, read) => read(sink)

/** Reads again only what has changed: for a process that reads one folder again and again. */
export function keepingMemory(): Memory {
  const kept = new Map<string, { from: readonly unknown[]; value: unknown; found: readonly [RuleTexts, Problem][] }>()
  return <T>(what: string, from: readonly unknown[], sink: Sink, read: (sink: Sink) => T): T => {
    const known = kept.get(what)
    if (known && known.from.length === from.length && known.from.every((it, index) => it === from[index])) {
      for (const [rule, problem] of known.found) sink(rule, problem)
      // The name is that of one reader, and a reader gives one type.
      return known.value as T
    }
    const found: [RuleTexts, Problem][] = []
    const value = read((rule, problem) => {
      found.push([rule, problem])
      sink(rule, problem)
    })
    kept.set(what, { from, value, found })
    return value
  }
}

/** What a reader makes of one text alone. */
export function ofText<T>(memory: Memory, what: string, source: SourceText, sink: Sink, read: (sink: Sink) => T): T {
  return memory(`${what} ${source.file}`, [source.text], sink, read)
}
