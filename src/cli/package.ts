import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { zipFolder } from '../bundle/zip.ts'
import { advice, suggestFrom } from '../check/suggest.ts'
import type { Machine } from '../model/machine.ts'
import { packSequence, writeLaunchAssets } from '../site/pack-sequence.ts'
import { packageFormats } from '../training/packages/launch-page.ts'
import { keptFilesOf } from './kept-files.ts'
import { languageOf } from './language-of.ts'
import { machineToBuild } from './machine-to-build.ts'
import { type Options, UsageError } from './options.ts'
import { startProgress } from './progress.ts'
import { unspokenLanguages, writePages } from './write-pages.ts'

/** Packs the lessons of each sequence for the training system of an office. Nothing is packed of a folder with errors. */
export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const progress = startProgress()
  const sound = await machineToBuild(folder, options, progress, 'not packed: the pages do not agree with the machine')
  if ('refused' in sound) return 1
  const { machine, counts, accepted } = sound
  const language = languageOf(machine, options)
  const sequences = sequencesOf(machine, options)
  const format = packageFormats.find((it) => it === options.get('format')) ?? 'cmi5'
  const unspoken = unspokenLanguages(machine)
  if (unspoken !== undefined) {
    progress.done(`not packed: ${unspoken}`)
    return 2
  }
  const outDir = resolve(options.get('out') ?? join('dist', `${machine.file.id}-packages`))
  mkdirSync(outDir, { recursive: true })
  const work = mkdtempSync(join(tmpdir(), 'fettle-package-'))
  try {
    const siteDir = join(work, 'site')
    mkdirSync(siteDir)
    const written = await writePages({ machine, counts, accepted, preview: false, kept: keptFilesOf(folder, options), progress }, siteDir)
    if ('refused' in written) {
      progress.done(`not packed: ${written.refused}`)
      return 2
    }
    await writeLaunchAssets(siteDir)
    for (const sequence of sequences) {
      progress.step(sequence.id)
      const packed = join(work, sequence.id)
      mkdirSync(packed)
      packSequence({ machine, ...written, siteDir, sequence, format, language }, packed)
      const zip = join(outDir, `${sequence.id}.${format}.${language}.zip`)
      zipFolder(packed, zip, '')
      rmSync(packed, { recursive: true })
      progress.done(`${countOf(sequence.lessons.length, 'lesson')}, ${Math.ceil(statSync(zip).size / 1000)} kB, in ${zip}`)
    }
  } finally {
    rmSync(work, { recursive: true, force: true })
  }
  return 0
}

const countOf = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`

function sequencesOf({ training: { sequences } }: Machine, options: Options): Machine['training']['sequences'] {
  const id = options.get('sequence')
  if (sequences.length === 0) throw new UsageError('training.yaml has no sequence, and a package is made for a sequence')
  if (id === undefined) return sequences
  const found = sequences.filter((sequence) => sequence.id === id)
  const ids = sequences.map((sequence) => sequence.id)
  if (found.length > 0) return found
  throw new UsageError(`training.yaml has no sequence \`${id}\`; ${advice(suggestFrom(ids)(id), 'sequence', `it has ${ids.join(', ')}`)}`)
}
