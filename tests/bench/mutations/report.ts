import type { Verdict } from './judge.ts'

const share = (part: number, whole: number) => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`)

/** The table by kind of mistake, the shares, and every mistake that was not found, as Markdown. */
export function reportMutations(verdicts: readonly Verdict[], onTheUntouched: number): string {
  const plain = verdicts.filter(({ mistake }) => !mistake.beyond)
  const apart = verdicts.filter(({ mistake }) => mistake.beyond)
  const found = plain.filter(({ findings }) => findings.length > 0)
  const missed = plain.filter(({ findings }) => findings.length === 0)
  const elsewhere = found.filter(({ atItsLine }) => !atItsLine)
  return [
    '| kind of mistake | made | at its line | elsewhere | not found | counted apart: found of made |',
    '| --- | --: | --: | --: | --: | --: |',
    ...[...Map.groupBy(verdicts, ({ mistake }) => mistake.kind)].map(([kind, list]) => row(kind, list)),
    '',
    `Findings on the untouched example: ${onTheUntouched}.`,
    `Mistakes: ${verdicts.length}.`,
    ...(['another real thing', 'nobody has to write it'] as const).map((why) => {
      const list = apart.filter(({ mistake }) => mistake.beyond === why)
      return `Counted apart, ${why}: ${list.length}, of which ${list.filter(({ findings }) => findings.length > 0).length} are found all the same.`
    }),
    `Of the other ${plain.length}: found ${found.length} (${share(found.length, plain.length)}), at the right line ${found.length - elsewhere.length} (${share(found.length - elsewhere.length, plain.length)}), not found ${missed.length}.`,
    `Found of all ${verdicts.length}: ${share(verdicts.length - verdicts.filter(({ findings }) => findings.length === 0).length, verdicts.length)}.`,
    `Findings for one mistake: ${spread(found.map(({ findings }) => findings.length))}.`,
    ...section('Not found', missed, () => ''),
    ...section('Found elsewhere', elsewhere, ({ findings: [first] }) => (first ? ` -> ${first.place.file}:${first.place.line} ${first.rule}` : '')),
    ...section(
      'Counted apart and not found',
      apart.filter(({ findings }) => findings.length === 0),
      ({ mistake }) => ` (${mistake.beyond})`,
    ),
    '',
  ].join('\n')
}

function row(kind: string, list: readonly Verdict[]): string {
  const plain = list.filter(({ mistake }) => !mistake.beyond)
  const apart = list.filter(({ mistake }) => mistake.beyond)
  const count = (test: (verdict: Verdict) => boolean) => plain.filter(test).length
  const cells = [
    plain.length,
    count(({ atItsLine }) => atItsLine),
    count(({ atItsLine, findings }) => !atItsLine && findings.length > 0),
    count(({ findings }) => findings.length === 0),
    apart.length === 0 ? '' : `${apart.filter(({ findings }) => findings.length > 0).length} of ${apart.length}`,
  ]
  return `| ${kind} | ${cells.join(' | ')} |`
}

/** Half of them have at most the first number, nine of ten at most the second. */
function spread(counts: readonly number[]): string {
  const sorted = counts.toSorted((a, b) => a - b)
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0
  return `half have at most ${at(0.5)}, nine of ten at most ${at(0.9)}, the most is ${at(1)}`
}

function section(title: string, list: readonly Verdict[], more: (verdict: Verdict) => string): string[] {
  if (list.length === 0) return []
  return ['', `## ${title}`, '', ...list.map((verdict) => `- ${verdict.mistake.kind}: ${verdict.mistake.what}${more(verdict)}`)]
}
