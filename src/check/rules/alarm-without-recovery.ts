import type { Rule } from '../rule.ts'

export const alarmWithoutRecovery: Rule = {
  id: 'alarm-without-recovery',
  severity: 'warning',
  summary: 'An alarm has no page that tells how to recover from it.',
  why: 'The operator at a stopped machine finds no help.',
  source: 'house rule',

  *check({ alarms, pages, absent }) {
    const written = new Set(pages.flatMap((page) => (page.collection === 'alarms' ? [page.frontmatter.alarm] : [])))
    if ([...absent].some(([name, { reason }]) => reason === 'broken' && name.startsWith('page:alarms/'))) return
    for (const { number } of alarms) {
      if (!written.has(number.value))
        yield {
          message: `alarm \`${number.value}\` has no recovery`,
          place: number.place,
          help: `write pages/alarms/<name>.mdx with \`alarm: ${number.value}\``,
        }
    }
  },
}
