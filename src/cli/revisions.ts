import { existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { readReleaseFile } from '../bundle/read-release.ts'
import { dataFileName, readDataFile } from '../changes/data-file.ts'
import type { MachineRecords } from '../changes/records.ts'
import { recordsOf } from '../changes/records-of.ts'
import { loadMachine } from '../load/load-machine.ts'
import type { Machine } from '../model/machine.ts'
import { where } from '../report/short.ts'
import type { Finding } from '../source/finding.ts'
import { type Options, UsageError } from './options.ts'
import { openFolder, openShared } from './paths.ts'

/** One of two revisions: its data, and its units where it is a folder. */
export interface Side {
  records: MachineRecords
  machines: readonly Machine[]
}

export interface Revisions {
  old: Side
  now: Side
  remarks: readonly string[]
}

/**
 * Opens two machine folders or releases. Where one is a release, or a unit is asked for, the folders are cut down to
 * that unit. What a folder could not give is in its records; a folder that is no machine is refused.
 */
export async function openRevisions(oldPath: string, nowPath: string, options: Options): Promise<Revisions | { refused: string }> {
  const releases = [oldPath, nowPath].map((path) => (isRelease(path) ? openRelease(path) : undefined))
  const [oldRelease, nowRelease] = releases
  for (const release of releases) if (release && 'refused' in release) return release
  const serials = releases.flatMap((release) => (release && 'side' in release ? release.side.records.revision.serials : []))
  const serial = options.get('serial') ?? serials[0]
  const open = (path: string, release: Opened | undefined) => release ?? openMachine(path, serial, options)
  const [old, now] = [open(oldPath, oldRelease), open(nowPath, nowRelease)]
  if ('refused' in old) return old
  if ('refused' in now) return now
  return { old: old.side, now: now.side, remarks: [...old.remarks, ...now.remarks, ...differences(old.side.records, now.side.records)] }
}

type Opened = { side: Side; remarks: string[] } | { refused: string }

/** A zip file, or a folder with a manifest and no machine. */
function isRelease(path: string): boolean {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) return existsSync(path)
  return existsSync(join(path, 'manifest.json')) && !existsSync(join(path, 'machine.yaml'))
}

function openRelease(path: string): Opened {
  const read = readReleaseFile(path, dataFileName)
  if ('problem' in read) return { refused: `${path}: ${read.problem}; compare with the folder that it was built from` }
  const parsed = readDataFile(read.text)
  if ('problem' in parsed) return { refused: `${path}: ${parsed.problem}` }
  return { side: { records: parsed.records, machines: [] }, remarks: [] }
}

function openMachine(path: string, serial: string | undefined, options: Options): Opened {
  // The texts on PDF sheets are no part of what is compared, and take long to read.
  const { machines, findings, ...read } = loadMachine(openFolder(path), openShared(options), serial)
  const [first, ...rest] = machines
  if (first) {
    return { side: { records: recordsOf([first, ...rest], read, serial), machines }, remarks: unreadPages(machines) }
  }
  const error = findings.find(({ severity }) => severity === 'error')
  if (error) return { refused: `${firstLineOf(error)}; \`fettle check ${path}\` tells more` }
  throw new UsageError(`${path} has no unit with the serial number \`${serial}\`; name one that both revisions have with --serial`)
}

const firstLineOf = ({ place, message }: Finding) => `${where(place)}: ${message}`

/** Pages whose text is not known: what they speak of is not told. */
function unreadPages(machines: readonly Machine[]): string[] {
  const broken = machines.flatMap(({ absent }) =>
    [...absent].flatMap(([name, { reason, place }]) =>
      reason === 'broken' && name.startsWith('page:') ? [`${where(place)}: the page could not be read`] : [],
    ),
  )
  const translations = machines.flatMap(({ pages }) =>
    pages.flatMap(({ id, brokenTranslations }) => [...brokenTranslations].map((language) => `${id}: the text in ${language} could not be read`)),
  )
  return [...new Set([...broken, ...translations])].map((fact) => `${fact}, so what it speaks of is not told`)
}

function differences(old: MachineRecords, now: MachineRecords): string[] {
  const [a, b] = [old.revision, now.revision]
  const list = (values: readonly string[]) => (values.length > 0 ? values.map((value) => `\`${value}\``).join(', ') : 'none')
  const remarks: string[] = []
  if (a.id !== b.id) remarks.push(`these are two machines: \`${a.id}\` and \`${b.id}\``)
  // `fitted` is there for one unit alone.
  if (a.fitted && b.fitted) {
    const [before, after] = [list(a.serials), list(b.serials)]
    remarks.push(`compared is what fits serial no. ${before === after ? after : `${before} in the old revision and ${after} in the new one`}`)
  }
  if (a.fitted && b.fitted && list(a.fitted) !== list(b.fitted))
    remarks.push(`the units carry other options, and what only one has is told as gone or new; old: ${list(a.fitted)}; new: ${list(b.fitted)}`)
  return remarks
}
