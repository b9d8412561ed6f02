import { reportJson } from '../report/json.ts'
import { reportSarif } from '../report/sarif.ts'
import { reportShort } from '../report/short.ts'
import { reportText } from '../report/text.ts'
import { everyRule } from './every-rule.ts'
import { checkFolder, countFindings, sharesOf } from './load.ts'
import type { Options } from './options.ts'
import { version } from './version.ts'

export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const { loaded, machine, findings } = await checkFolder(folder, options)
  const counts = countFindings(findings)
  const summary = {
    ...counts,
    pages: machine?.pages.length ?? 0,
    devices: machine?.devices.length ?? 0,
    alarms: machine?.alarms.length ?? 0,
    parts: machine?.parts.length ?? 0,
    drawings: machine?.drawings.length ?? 0,
  }
  switch (options.get('format')) {
    case 'json':
      process.stdout.write(reportJson(findings, machine?.file.id, summary, sharesOf(machine)))
      break
    case 'sarif':
      process.stdout.write(reportSarif(findings, everyRule, version))
      break
    case 'short':
      process.stdout.write(reportShort(findings))
      break
    default:
      process.stdout.write(reportText(findings, loaded.texts, summary, sharesOf(machine)))
  }
  return counts.errors > 0 ? 1 : 0
}
