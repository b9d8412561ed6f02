import { join, resolve } from 'node:path'
import { buildSite } from './build-site.ts'
import { machineToBuild } from './machine-to-build.ts'
import type { Options } from './options.ts'
import { startProgress } from './progress.ts'

export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const progress = startProgress()
  const sound = await machineToBuild(
    folder,
    options,
    progress,
    'not built: the pages do not agree with the machine. An earlier build is left as it was.',
  )
  if (!sound) return 1
  const { machine, counts, accepted } = sound
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
