import { join } from 'node:path'
import { build } from 'esbuild'
import { where } from '../report/short.ts'
import type { Finding } from '../source/finding.ts'
import { packageDir } from './paths.ts'

/** The script that shows findings in a page of the preview, as a classic script. It is no part of a build. */
export async function previewScript(): Promise<string> {
  const entry = join(packageDir, 'src/site/scripts/preview.ts')
  const { outputFiles } = await build({ entryPoints: [entry], bundle: true, format: 'iife', write: false, charset: 'utf8', logLevel: 'silent' })
  return outputFiles[0]?.text ?? ''
}

/** What the preview writes after each page: the findings, and the script that shows them. `current`: the page is of the checked files. */
export function previewTail(findings: readonly Finding[], current: boolean): string {
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
    })),
  }
  const json = JSON.stringify(report).replaceAll('<', '\\u003c')
  return `<script type="application/json" id="fettle-findings">${json}</script><script src="/.preview.js"></script>`
}

/** What stands at every address until there is a build. */
export const notBuiltYet = '<!doctype html><meta charset="utf-8"><title>Not built yet</title><p>Nothing was built yet: the check found errors.</p>'
