import { join, resolve } from 'node:path'
import { buildSite } from './build-site.ts'
import { keptFilesOf } from './kept-files.ts'
import { machineToBuild } from './machine-to-build.ts'
import type { Options } from './options.ts'
import type { BuildKeeper } from './portfolio/kept-build.ts'
import type { Outcome } from './portfolio/outcome.ts'
import type { Progress } from './progress.ts'

const refusal = 'not built: the pages do not agree with the machine. An earlier build is left as it was.'

/** Checks and builds one machine folder, and tells of it. With a keeper an earlier build of the same inputs is left as it is. */
export async function buildFolder(options: Options, progress: Progress, keeper?: BuildKeeper): Promise<Outcome> {
  const [folder = '.'] = options.words
  const sound = await machineToBuild(folder, options, progress, refusal, keeper?.folders)
  if ('refused' in sound) {
    const { machine, refused } = sound
    return { state: 'refused', code: 1, ...(machine ? { model: machine.file.model, serial: machine.unit.serial } : {}), ...refused }
  }
  const unchanged = await keeper?.unchangedAs(sound)
  if (unchanged) return unchanged
  const { machine, counts, accepted } = sound
  const outDir = resolve(options.get('out') ?? join('dist', machine.file.id))
  const about = { model: machine.file.model, serial: machine.unit.serial, ...counts }
  const built = await buildSite({ machine, counts, accepted, outDir, zip: !options.has('no-zip'), kept: keptFilesOf(folder, options), progress })
  if ('refused' in built) {
    progress.done(`not built: ${built.refused}`)
    return { state: 'not built', code: 2, ...about }
  }
  const { pages, checkValue } = built
  progress.done(`${pages} pages for serial no. ${machine.unit.serial}, check value ${checkValue}, in ${outDir}`)
  if (accepted.length > 0) progress.done(`accepted ${accepted.length}: the about page tells why`)
  if (counts.warnings > 0) progress.done(`${counts.warnings} warnings: see \`fettle check ${folder}\``)
  const told = { ...about, pages, checkValue }
  keeper?.keep(sound, told)
  return { state: 'built', code: 0, ...told }
}
