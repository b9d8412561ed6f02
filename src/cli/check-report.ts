import { reportJson } from '../report/json.ts'
import { reportJunit } from '../report/junit.ts'
import { reportSarif } from '../report/sarif.ts'
import { reportShort } from '../report/short.ts'
import { reportText } from '../report/text.ts'
import { everyRule } from './every-rule.ts'
import type { Report } from './kept-report.ts'
import { type Checked, countFindings, sharesOf } from './load.ts'
import type { Options } from './options.ts'
import { version } from './version.ts'

/** What `fettle check` prints, in the form that was asked for, and its exit code. */
export function reportOf({ loaded, machine, findings, accepted }: Checked, options: Options): Report {
  const counts = countFindings(findings)
  const summary = {
    ...counts,
    pages: machine?.pages.length ?? 0,
    devices: machine?.devices.length ?? 0,
    alarms: machine?.alarms.length ?? 0,
    parts: machine?.parts.length ?? 0,
    drawings: machine?.drawings.length ?? 0,
  }
  const form = {
    text: () => reportText(findings, loaded.texts, summary, sharesOf(machine), accepted),
    short: () => reportShort(findings),
    json: () => reportJson(findings, machine?.file.id, summary, sharesOf(machine), accepted),
    junit: () => reportJunit(findings, loaded.texts, summary, accepted),
    sarif: () => reportSarif(findings, everyRule, version, accepted),
  }
  const name = options.get('format') as keyof typeof form | undefined
  return { text: form[name ?? 'text'](), code: counts.errors > 0 ? 1 : 0 }
}
