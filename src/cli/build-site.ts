import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { writeManifest } from '../bundle/manifest.ts'
import { publish, recover } from '../bundle/publish.ts'
import { verify } from '../bundle/verify.ts'
import { zipFolder } from '../bundle/zip.ts'
import { dataFileName, writeDataFile } from '../changes/data-file.ts'
import { recordsOf } from '../changes/records-of.ts'
import { dataFiles } from '../model/data-files.ts'
import type { Machine } from '../model/machine.ts'
import { speak } from '../model/words.ts'
import { openSearch, type SearchIndex } from '../search/build-index.ts'
import { writeLinkLists } from '../site/link-lists.ts'
import { searchEntries, searchPages, synonyms } from '../site/search-entries.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import type { Progress } from './progress.ts'
import type { Sound } from './release-inputs.ts'
import { version } from './version.ts'
import { unspokenLanguages, writePages } from './write-pages.ts'

export interface BuildInput extends Sound {
  outDir: string
  zip: boolean
  /** Lets pages say where their blocks stand. Never in a build that is handed on. */
  preview?: boolean
  /** What earlier builds have kept; undefined: trust nothing that is kept. */
  kept: KeptFiles | undefined
  progress: Progress
}

/**
 * Builds a checked machine beside its place and moves it there when it is whole, so that a build that fails
 * or is ended leaves the earlier one as it was.
 */
export async function buildSite({
  machine,
  counts,
  accepted,
  outDir,
  zip,
  preview = false,
  kept,
  progress,
}: BuildInput): Promise<{ pages: number; checkValue: string } | { refused: string }> {
  const unspoken = unspokenLanguages(machine)
  if (unspoken !== undefined) return { refused: unspoken }
  // A swap that was ended half-way is finished first, whatever becomes of this build.
  const recovered = recover(outDir)
  if ('refused' in recovered) return recovered
  const staged = stageBeside(outDir)
  let search: SearchIndex | undefined
  try {
    const written = await writePages({ machine, counts, accepted, preview, kept, progress }, staged, async ({ path, html, read }, pages) => {
      search ??= await openSearch(Math.max(...machine.languages.map((language) => pages.filter((page) => page.language === language).length)))
      await search.add(path, html, read.indexed)
    })
    if ('refused' in written) return written
    const { graph, pages, checkValue } = written
    writeLinkLists(machine, pages, staged)
    progress.step('search')
    if (!search) throw new Error('the site has no page')
    await search.write({
      outDir: join(staged, 'search'),
      languages: [...machine.languages],
      entries: searchEntries(machine, graph, pages),
      pages: searchPages(machine, graph, pages),
      synonyms: synonyms(machine),
    })
    // What `fettle changes` compares a later revision with.
    writeFileSync(join(staged, dataFileName), writeDataFile(recordsOf([machine], undefined, machine.unit.serial)))
    progress.step('manifest')
    writeManifest(staged, {
      machine: identity(machine),
      data: dataFiles(machine).map(({ path, sha256 }) => ({ file: path, sha256 })),
      check: counts,
      checkValue,
      tool: `fettle ${version}`,
    })
    // The zip is made before the swap, so that folder and zip change together.
    const stagedZip = `${staged}.zip`
    if (zip) {
      progress.step('zip')
      zipFolder(staged, stagedZip, basename(outDir))
    }
    const published = publish(staged, outDir)
    if ('refused' in published) return published
    if (zip) renameSync(stagedZip, `${outDir}.zip`)
    else await removeEarlierZip(`${outDir}.zip`)
    return { pages: pages.length, checkValue }
  } finally {
    await search?.close()
    rmSync(staged, { recursive: true, force: true })
    rmSync(`${staged}.zip`, { force: true })
  }
}

/** The zip of an earlier build beside a new folder would be taken for its zip. A zip that is no release is left alone. */
async function removeEarlierZip(path: string): Promise<void> {
  if (existsSync(path) && (await verify(path)).machine) rmSync(path)
}

/** An empty hidden folder beside the target, of this process alone; what ended builds left there is taken away. */
function stageBeside(outDir: string): string {
  const parent = dirname(outDir)
  const prefix = `.${basename(outDir)}.new-`
  mkdirSync(parent, { recursive: true })
  for (const name of readdirSync(parent)) {
    const pid = Number(/^(\d+)(\.zip)?$/.exec(name.startsWith(prefix) ? name.slice(prefix.length) : '')?.[1])
    if (pid && !isRunning(pid)) rmSync(join(parent, name), { recursive: true, force: true })
  }
  const staged = join(parent, `${prefix}${process.pid}`)
  rmSync(staged, { recursive: true, force: true })
  mkdirSync(staged)
  return staged
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    // Not allowed to signal it: it runs, as somebody else.
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

function identity({ file, unit, name, languages, sourceLanguage }: Machine): Record<string, unknown> {
  return {
    id: file.id,
    name: Object.fromEntries(languages.map((language) => [language, speak(name, language, sourceLanguage).text])),
    languages,
    model: file.model,
    serial: unit.serial,
    fitted: [...unit.fitted],
    builder: file.builder,
    document: file.document,
    revision: file.revision,
    date: file.date,
  }
}
