import { type Report, reportKeeper } from './kept-report.ts'
import type { Options } from './options.ts'
import { openFolders } from './paths.ts'

/** Checks a folder and prints the report. */
export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  if (options.has('watch')) {
    const [{ watchCheck }, { reportOf }] = await Promise.all([import('./watch-check.ts'), import('./check-report.ts')])
    return await watchCheck(folder, options, (checked) => reportOf(checked, options))
  }
  const { text, code } = await reportFor(folder, options)
  process.stdout.write(text)
  return code
}

/** The report of a folder: the one that is kept where nothing has changed since, for which nothing is loaded. */
export async function reportFor(folder: string, options: Options): Promise<Report & { isKept: boolean }> {
  const keeper = reportKeeper(folder, options, openFolders(folder, options))
  const kept = keeper.kept()
  if (kept) return { ...kept, isKept: true }
  const [{ checkFolder }, { reportOf }] = await Promise.all([import('./load.ts'), import('./check-report.ts')])
  const report = reportOf(await checkFolder(folder, options, undefined, keeper.folders), options)
  keeper.keep(report)
  return { ...report, isKept: false }
}
