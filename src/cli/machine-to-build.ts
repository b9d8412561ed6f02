import { inItsLanguages } from '../model/in-its-languages.ts'
import type { Machine } from '../model/machine.ts'
import { reportText } from '../report/text.ts'
import type { Folders } from './kept-key.ts'
import { checkFolder, countFindings, sharesOf } from './load.ts'
import type { Options } from './options.ts'
import { openFolders } from './paths.ts'
import type { Progress } from './progress.ts'
import type { Sound } from './release-inputs.ts'

/** A folder with errors: how many, and the unit that was asked for, as far as it could be read. */
export interface Refused {
  refused: Sound['counts']
  machine: Machine | undefined
}

/**
 * What a site is made of, where the folder has no error. Of any other nothing is made: its findings are shown, and `refusal`
 * says what becomes of it.
 */
export async function machineToBuild(
  path: string,
  options: Options,
  progress: Progress,
  refusal: string,
  folders: Folders = openFolders(path, options),
): Promise<Sound | Refused> {
  progress.step('check')
  const { loaded, machine, findings, accepted } = await checkFolder(path, options, undefined, folders)
  const counts = countFindings(findings)
  if (machine && counts.errors === 0) return { machine: inItsLanguages(machine), counts, accepted }
  process.stdout.write(reportText(findings, loaded.texts, counts, sharesOf(machine), accepted))
  progress.done(refusal)
  return { refused: counts, machine }
}
