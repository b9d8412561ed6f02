import { writeFileSync } from 'node:fs'
import { groupOf } from '../changes/change.ts'
import { compareRecords } from '../changes/compare-records.ts'
import { speakingPages } from '../changes/speaking-pages.ts'
import { reportChangesJson } from '../report/changes-json.ts'
import { reportChangesPage } from '../report/changes-page.ts'
import { reportChangesText } from '../report/changes-text.ts'
import type { ChangesReport } from '../report/changes-words.ts'
import { type Options, UsageError } from './options.ts'
import { retrainingIn } from './retraining.ts'
import { openRevisions, type Revisions } from './revisions.ts'

export async function run(options: Options): Promise<number> {
  const [oldPath = '.', nowPath = '.'] = options.words
  const opened = await openRevisions(oldPath, nowPath, options)
  if ('refused' in opened) {
    process.stderr.write(`fettle changes: ${opened.refused}\n`)
    return 2
  }
  const compared = reportOf(opened)
  const records = options.get('records')
  const found = records === undefined ? {} : retrainingIn(records, opened, compared)
  if ('refused' in found) {
    process.stderr.write(`fettle changes: ${found.refused}\n`)
    return 2
  }
  const report = { ...compared, ...found }
  const text = await written(report, options.get('format'))
  const out = options.get('out')
  if (out === undefined) process.stdout.write(text)
  else write(out, text)
  return 0
}

function write(path: string, text: string): void {
  try {
    writeFileSync(path, text)
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${error instanceof Error ? error.message : String(error)}`)
  }
}

async function written(report: ChangesReport, format: string | undefined): Promise<string> {
  if (format === 'json') return reportChangesJson(report)
  if (format !== 'html') return reportChangesText(report)
  // The bundler of styles is read only when a page is asked for.
  const { inlineStyle } = await import('../site/inline-style.ts')
  return reportChangesPage(report, await inlineStyle('changes.css'))
}

function reportOf({ old, now, remarks }: Revisions): ChangesReport {
  const { changes, ...rest } = compareRecords(old.records, now.records)
  const pagesOf = now.machines.length > 0 ? 'new' : old.machines.length > 0 ? 'old' : undefined
  const [own, other] = pagesOf === 'old' ? [old, now] : [now, old]
  const pages = speakingPages(changes, own.machines, other.machines)
  return { ...rest, pagesOf, remarks, changes: changes.map((change, index) => ({ ...change, group: groupOf(change), pages: pages[index] ?? [] })) }
}
