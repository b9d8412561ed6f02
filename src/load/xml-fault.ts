import { offsetOf, type SourceText } from '../source/source-text.ts'

/** What the XML parser stopped at, and where. */
export function xmlFault(error: unknown, source: SourceText): { reason: string; offset: number } {
  const outer = error instanceof Error ? error : new Error(String(error))
  const thrown = outer.cause instanceof Error ? outer.cause : outer
  const { line, column } = thrown as { line?: number; column?: number }
  return { reason: thrown.message.replace(/\s*\(line \d+.*$/s, '').toLowerCase(), offset: line && column ? offsetOf(source, line, column) : 0 }
}
