import { normalise } from '../../model/designation.ts'
import type { Rule } from '../rule.ts'

export const alarmWithoutRecovery: Rule = {
  id: 'alarm-without-recovery',
  severity: 'warning',
  summary: 'An alarm has no page that tells how to recover from it.',
  why: 'The operator at a stopped machine finds no help.',
  source: 'house rule',

  *check({ alarms, pages, absent }) {
    // A number in another spelling is reported as an unknown alarm.
    const written = new Set(pages.flatMap((page) => (page.collection === 'alarms' ? [normalise(page.frontmatter.alarm)] : [])))
    // A page that cannot be read may be the one that is looked for.
    if ([...absent].some(([name, { reason }]) => reason === 'broken' && name.startsWith('page:alarms/'))) return
    for (const { number } of alarms) {
      if (!written.has(normalise(number.value)))
        yield {
          message: `alarm \`${number.value}\` has no recovery`,
          place: number.place,
          help: `write pages/alarms/<name>.mdx with \`alarm: ${number.value}\``,
        }
    }
  },
}
