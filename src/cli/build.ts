import { join, resolve } from 'node:path'
import { reportText } from '../report/text.ts'
import { buildSite } from './build-site.ts'
import { checkFolder, countFindings, sharesOf } from './load.ts'
import type { Options } from './options.ts'
import { startProgress } from './progress.ts'

export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const progress = startProgress()
  progress.step('check')
  const { loaded, machine, findings, accepted } = await checkFolder(folder, options)
  const counts = countFindings(findings)
  if (counts.errors > 0 || !machine) {
    process.stdout.write(reportText(findings, loaded.texts, counts, sharesOf(machine), accepted))
    progress.done('not built: the pages do not agree with the machine. An earlier build is left as it was.')
    return 1
  }
  const outDir = resolve(options.get('out') ?? join('dist', machine.file.id))
  const built = await buildSite({ machine, counts, accepted, outDir, zip: !options.has('no-zip'), progress })
  if ('refused' in built) {
    progress.done(`not built: ${built.refused}`)
    return 2
  }
  progress.done(`${built.pages} pages for serial no. ${machine.unit.serial}, check value ${built.checkValue}, in ${outDir}`)
  if (accepted.length > 0) progress.done(`accepted ${accepted.length}: the about page tells why`)
  if (counts.warnings > 0) progress.done(`${counts.warnings} warnings: see \`fettle check ${folder}\``)
  return 0
}
