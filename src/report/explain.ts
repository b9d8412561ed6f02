import type { RuleTexts } from '../source/finding.ts'
import type { RulePage } from './rule-page.ts'

/** Most pieces of advice that are shown: they differ in the names of the cases. */
const mostWaysOut = 5

/** A rule for a reader: what, why, source, what may be set, an example with its report, and the ways out. */
export function explainRule({ id, severity, summary, why, source, guards }: RuleTexts, page?: RulePage): string {
  const sections: [heading: string, text: string][] = [
    ['Why it matters', why],
    ['Where it comes from', source],
    ['What may be set', guardText(guards)],
  ]
  if (page?.example) sections.push([`Example: ${page.example.name}`, page.example.report])
  if (page && page.waysOut.length > 0) sections.push(['Ways out, from its examples', page.waysOut.slice(0, mostWaysOut).join('\n')])
  const more = page && !page.prose.startsWith(summary) ? page.prose : page?.prose.slice(summary.length).replace(why, '').trim()
  const written = sections.map(([heading, text]) => `\n${heading}\n${indented(text)}\n`)
  return `${id} (${severity})\n\n${indented(more ? `${summary}\n${more}` : summary)}\n${written.join('')}`
}

const indented = (text: string) => text.replace(/^(?=.)/gm, '  ')

/** Rules by what they look at, each with its severity, whether it is guarded, and its summary. */
export function listRules(groups: readonly { title: string; rules: readonly RuleTexts[] }[]): string {
  const width = Math.max(...groups.flatMap(({ rules }) => rules.map(({ id }) => id.length)))
  const line = ({ id, severity, guards, summary }: RuleTexts) =>
    `  ${id.padEnd(width)}  ${severity.padEnd(7)}  ${(guards === undefined ? '' : marks[guards]).padEnd(6)}  ${summary}\n`
  const lists = groups.map(({ title, rules }) => `${title}\n${rules.map(line).join('')}`)
  return `${lists.join('\n')}\npeople: guards people. whole: without it the manual is not whole. Both can only be raised; every other rule can be lowered or accepted.\n`
}

const marks = { people: 'people', build: 'whole' } as const

/** Whether a rule can be lowered and its findings accepted, in a sentence. */
export function guardText(guards: RuleTexts['guards']): string {
  if (guards === 'people') return 'It guards people: it can be raised, and neither lowered nor accepted.'
  if (guards === 'build') return 'The manual cannot be made whole while this is found: it can be raised, and neither lowered nor accepted.'
  return 'machine.yaml can raise or lower it, and accepted.yaml can accept what it finds.'
}
