import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { withZip } from '../bundle/read-zip.ts'
import { affectedBy } from '../changes/affected.ts'
import { compareRecords } from '../changes/compare-records.ts'
import { dataName, readData } from '../changes/data-file.ts'
import type { MachineRecords, RecordTable } from '../changes/records.ts'
import { recordsOf } from '../changes/records-of.ts'
import { type ChangesReport, reportChanges, reportChangesJson } from '../changes/report.ts'
import { reportChangesHtml } from '../changes/report-html.ts'
import type { Machine } from '../model/machine.ts'
import { type Checked, checkFolder } from './load.ts'
import { type Options, UsageError } from './options.ts'

/** Tells what a new revision of the data touches. Exit code 0 whatever has changed, 2 when one side cannot be read. */
export async function run(options: Options): Promise<number> {
  const [oldPath = '', newPath = ''] = options.words
  const old = await readOld(oldPath, options)
  const checked = await checkFolder(newPath, old.serial === undefined ? options : withSerial(options, old.serial, await unitsOf(newPath, options)))
  const machines = machinesOf(newPath, checked)
  const comparison = compareRecords(old.records, recordsOf(machines, unreadLists(checked)))
  const report: ChangesReport = { ...comparison, affected: affectedBy(comparison.changes, machines) }
  const form = { text: reportChanges, json: reportChangesJson, html: reportChangesHtml }
  const text = form[(options.get('format') ?? 'text') as keyof typeof form](report)
  const out = options.get('out')
  if (out === undefined) process.stdout.write(text)
  else writeFileSync(out, text)
  return 0
}

/** A machine folder, a built folder or its zip. A release holds the data of one unit, and says of which. */
async function readOld(path: string, options: Options): Promise<{ records: MachineRecords; serial?: string }> {
  const found = statSync(path, { throwIfNoEntry: false })
  if (!found) throw new UsageError(`there is no \`${path}\``)
  if (found.isDirectory() && existsSync(join(path, 'machine.yaml'))) {
    const checked = await checkFolder(path, options)
    return { records: recordsOf(machinesOf(path, checked), unreadLists(checked)) }
  }
  const text = found.isDirectory() ? textIn(join(path, dataName)) : textInZip(path)
  const records = text === undefined ? undefined : readData(text)
  if (!records) throw new UsageError(`\`${path}\` is no machine folder, and no release that holds its data in \`${dataName}\``)
  const [serial] = records.revision.serials
  return serial === undefined ? { records } : { records, serial }
}

const textIn = (path: string) => (existsSync(path) ? readFileSync(path, 'utf8') : undefined)

function textInZip(path: string): string | undefined {
  const reading = withZip(path, (entries) => entries.find(({ name }) => /^[^/]+\/data\.json$/.test(name))?.read())
  return 'problem' in reading || !reading.result ? undefined : new TextDecoder().decode(reading.result)
}

function machinesOf(path: string, { loaded, findings }: Checked): [Machine, ...Machine[]] {
  const [first, ...others] = loaded.machines
  if (!first) throw new UsageError(`\`${path}\` cannot be read: ${findings[0]?.message ?? 'it is no machine folder'}`)
  return [first, ...others]
}

async function unitsOf(path: string, options: Options): Promise<string[]> {
  return machinesOf(path, await checkFolder(path, options))[0].file.units.map(({ serial }) => serial)
}

/** Compares with the unit of the release where the new folder still has it, and with all units otherwise. */
function withSerial(options: Options, serial: string, units: readonly string[]): Options {
  return units.includes(serial) ? { ...options, get: (name) => (name === 'serial' ? serial : options.get(name)) } : options
}

const unreadRules = ['missing-column', 'missing-file', 'unreadable-file', 'not-text', 'file-too-large', 'unreadable-workbook', 'unknown-worksheet']

/** Lists that nothing refers to, so that the machine does not say of them that they could not be read. */
function unreadLists({ loaded, findings }: Checked): RecordTable[] {
  const [machine] = loaded.machines
  if (!machine) return []
  return (['signals', 'formats', 'cards'] as const).filter((table) => {
    const entry = machine.file.data[table]
    if (!entry) return false
    const named = machine.placeOf(['data', table, 'file'])
    return findings.some(
      ({ rule, place }) =>
        unreadRules.includes(rule) &&
        (place.file.endsWith(`/${entry.file}`) || place.file === entry.file || (place.file === named.file && place.line === named.line)),
    )
  })
}
