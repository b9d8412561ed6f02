import { where } from '../report/short.ts'
import { inlineScript } from '../site/inline-script.ts'
import type { Finding } from '../source/finding.ts'
import { offsetOf, sourceText } from '../source/source-text.ts'
import { everyRule } from './every-rule.ts'

/** The script that shows findings in a page of the preview, as a classic script. It is no part of a build. */
export const previewScript = (): Promise<string> => inlineScript('preview.ts')

const wording = new Set(everyRule.filter(({ concerns }) => concerns === 'wording').map(({ id }) => id))

/**
 * What the preview writes after each page: the findings, and the script that shows them. `current`: the page is of the checked files.
 * A finding about the wording comes with the words it is about, to be marked where they stand.
 */
export function previewTail(findings: readonly Finding[], texts: ReadonlyMap<string, string>, current: boolean): string {
  const report = {
    current,
    findings: findings.map(({ place, severity, message, rule, note, help }) => ({
      file: place.file,
      line: place.line,
      severity,
      where: where(place),
      message,
      rule,
      note,
      help,
      words: wording.has(rule) ? wordsAt(place, texts.get(place.file)) : undefined,
    })),
  }
  const json = JSON.stringify(report).replaceAll('<', '\\u003c')
  return `<script type="application/json" id="fettle-findings">${json}</script><script src="/.preview.js"></script>`
}

/** The words at a place, without the marks of Markdown and without elements: the pieces that a page shows as they are written. */
function wordsAt(place: Finding['place'], text: string | undefined): string[] {
  if (text === undefined) return []
  const source = sourceText(place.file, text)
  const [start, end] = [offsetOf(source, place.line, place.column), offsetOf(source, place.endLine, place.endColumn)]
  const pieces = text.slice(start, end).split(/<[^>]*>|[*_`]+|\]\([^)]*\)|\[/)
  return pieces.map((piece) => piece.replace(/\s+/g, ' ').trim()).filter((piece) => piece !== '')
}

/** What stands at every address until there is a build. */
export const notBuiltYet = '<!doctype html><meta charset="utf-8"><title>Not built yet</title><p>Nothing was built yet: the check found errors.</p>'
