import { existsSync, writeFileSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { readText } from '../load/decode.ts'
import { collect } from '../load/load-rules.ts'
import { type Revised, revise } from '../load/revise.ts'
import { reportShort } from '../report/short.ts'
import type { Finding } from '../source/finding.ts'
import { type Options, UsageError } from './options.ts'
import { openFolder } from './paths.ts'

/** Stamps lessons with what their last revision teaches, and tells which had changed. */
export async function run({ words }: Options): Promise<number> {
  for (const path of words) {
    if (!path.endsWith('.mdx')) throw new UsageError(`\`${path}\` is no page: its name ends with \`.mdx\``)
    if (/\.[a-z]{2}\.mdx$/.test(path)) throw new UsageError(`\`${path}\` is a translation: name the lesson that it translates`)
    if (!existsSync(path)) throw new UsageError(`there is no file \`${path}\``)
  }
  let failed = false
  for (const path of words) {
    const findings: Finding[] = []
    const sink = collect(findings)
    const source = readText(openFolder(dirname(path)), basename(path), sink)
    const result = source && revise(source, sink)
    process.stdout.write(reportShort(findings))
    if (result && 'text' in result) {
      if (result.text !== source.text) writeFileSync(path, result.text)
      process.stdout.write(`${path}: ${said(result)}\n`)
      continue
    }
    failed = true
    const why = !result
      ? ''
      : 'noHistory' in result
        ? ': it has no `history`'
        : `: it is at revision ${result.revision}, and its history ends with ${result.last}`
    process.stdout.write(`${path}: not stamped${why}\n`)
  }
  return failed ? 1 : 0
}

const said = ({ revision, date, before }: Revised) => `revision ${revision} of ${date} ${stood[before]}`

const stood: Readonly<Record<Revised['before'], string>> = {
  unstamped: 'stamped for the first time',
  same: 'is what it was',
  changed: 'had changed since it was stamped: people who were taught it before count as taught what it says now',
}
