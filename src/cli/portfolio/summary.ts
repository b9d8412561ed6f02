import type { Outcome } from './outcome.ts'
import type { FinishedBuild } from './run-builds.ts'

/** What became of several machines, a line each, and their number. */
export function summaryOf(builds: readonly FinishedBuild[], seconds: number, jobs: number): string {
  const rows = [
    ['machine', 'model', 'serial no.', 'pages', 'errors', 'warnings', 'seconds', ''],
    ...builds.map(({ folder, outcome: { model, serial, pages, errors, warnings, state }, seconds }) => [
      ...[folder, model ?? '-', serial ?? '-'],
      ...[pages, errors, warnings].map((count) => (count === undefined ? '-' : String(count))),
      ...[seconds.toFixed(1), state],
    ]),
  ]
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? []
  const isNumber = (column: number) => column >= 3 && column <= 6
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (isNumber(column) ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0)))
      .join('  ')
      .trimEnd()
  const states: readonly Outcome['state'][] = ['built', 'unchanged', 'refused', 'not built']
  const counted = states.flatMap((state) => {
    const count = builds.filter(({ outcome }) => outcome.state === state).length
    return count > 0 ? [`${count} ${state}`] : []
  })
  return `${rows.map(line).join('\n')}\n\n${builds.length} machine${builds.length === 1 ? '' : 's'}: ${counted.join(', ')}; ${seconds.toFixed(1)} s, at most ${jobs} at once\n`
}
