import type { Problem, RuleTexts } from '../source/finding.ts'
import { offsetOf, type SourceText } from '../source/source-text.ts'
import { loadRules } from './load-rules.ts'

/** Turns what the MDX parser threw ("line:column: text (code)") into a finding in the author's words. */
export function mdxProblem(error: unknown, source: SourceText): { rule: RuleTexts; problem: Problem } {
  const thrown = error instanceof Error ? error.message : String(error)
  const [, line, column, text = thrown] = /^(\d+):(\d+): ([\s\S]*)$/.exec(thrown) ?? []
  const offset = line && column ? offsetOf(source, Number(line), Number(column)) : 0
  const place = source.place(offset, offset + 1)
  const note = 'the MDX parser stopped here; the page was not checked further'
  const stopped = (message: string, help: string, rule: RuleTexts = loadRules.mdxSyntax) => ({ rule, problem: { message, place, note, help } })

  const [, closing, opening, openLine, openColumn] =
    /closing tag `<\/([^>`]*)>`, expected corresponding closing tag for `<([^>`]*)>` \((\d+):(\d+)\)/.exec(text) ?? []
  if (closing !== undefined && opening !== undefined) {
    const open = offsetOf(source, Number(openLine), Number(openColumn))
    return {
      rule: loadRules.mdxSyntax,
      problem: {
        message: `\`</${closing}>\` closes \`<${opening}>\``,
        place: source.place(offset, offset + closing.length + 3),
        related: [{ label: `\`<${opening}>\` was opened here`, place: source.place(open, open + opening.length + 1) }],
        note,
        help: `write \`</${opening}>\``,
      },
    }
  }
  const unclosed = /Expected a closing tag for `<([^>`]*)>`/.exec(text)?.[1]
  if (unclosed !== undefined) {
    const html = unclosed.toLowerCase() === unclosed
    return stopped(
      `\`<${unclosed}>\` is never closed`,
      html
        ? `remove it, or write \`<${unclosed} />\` if one of our elements is meant`
        : `write \`</${unclosed}>\` where it ends, or \`<${unclosed} … />\` if it is empty`,
    )
  }
  if (/expression/.test(text)) {
    // The parser stops inside the expression; the bracket that opens it is what the author must see.
    const brace = Math.max(0, source.text.lastIndexOf('{', offset))
    return {
      rule: loadRules.expressionInProse,
      problem: {
        message: '`{` starts a computed expression',
        place: source.place(brace, brace + 1),
        note,
        help: 'write `\\{`, or the text without curly brackets',
      },
    }
  }
  const next = source.text.slice(source.text.indexOf('<', Math.max(0, offset - 1)) + 1)[0] ?? ''
  if (next === '!') return stopped('`<!--` is not a comment in MDX', 'write `{/* … */}`, or remove it')
  if (/[\d=\s]/.test(next))
    return stopped(`\`<\` followed by \`${next}\` starts a tag in MDX`, `write \`&lt;${next}\`, or "less than", or put a space after the \`<\``)
  return stopped(
    text.replace(/ \((note:|mdx-).*$/s, '').replace(/^[A-Z]/, (letter) => letter.toLowerCase()),
    'correct the tag, or write `&lt;` for a plain `<`',
  )
}
