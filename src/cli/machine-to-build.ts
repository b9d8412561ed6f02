import type { AcceptedFinding } from '../check/accept.ts'
import { inItsLanguages } from '../model/in-its-languages.ts'
import type { Machine } from '../model/machine.ts'
import { reportText } from '../report/text.ts'
import { checkFolder, countFindings, sharesOf } from './load.ts'
import type { Options } from './options.ts'
import type { Progress } from './progress.ts'

/**
 * What a site is made of, where the folder has no error. Of any other nothing is made: its findings are shown, and `refusal`
 * says what becomes of it.
 */
export async function machineToBuild(
  path: string,
  options: Options,
  progress: Progress,
  refusal: string,
): Promise<{ machine: Machine; counts: ReturnType<typeof countFindings>; accepted: readonly AcceptedFinding[] } | undefined> {
  progress.step('check')
  const { loaded, machine, findings, accepted } = await checkFolder(path, options)
  const counts = countFindings(findings)
  if (machine && counts.errors === 0) return { machine: inItsLanguages(machine), counts, accepted }
  process.stdout.write(reportText(findings, loaded.texts, counts, sharesOf(machine), accepted))
  progress.done(refusal)
  return undefined
}
