import { mkdirSync, rmSync, statSync } from 'node:fs'
import { join, resolve, sep } from 'node:path'
import type { Machine } from '../model/machine.ts'
import { writeAssets } from '../site/assets.ts'
import { handOver, type SiteInput } from '../site/handover.ts'
import { openPages, type RenderPage } from '../site/run-astro.ts'
import { type BuildInput, buildSite } from './build-site.ts'
import type { Progress } from './progress.ts'
import { newWorkDir, siteInput, unspokenLanguages } from './write-pages.ts'

export type Shown = Pick<BuildInput, 'machine' | 'counts' | 'accepted'>

export interface PreviewSite {
  /** Shows another state of the machine from now on; what keeps it from being shown leaves the one before. */
  show(shown: Shown): Promise<{ refused: string } | undefined>
  /** The page or file at a path of the site; undefined where there is none. */
  at(path: string): Promise<{ html: string } | { file: string } | undefined>
  /** Whether anything is shown yet. */
  isEmpty(): boolean
}

/**
 * A site of which each page is made when it is looked at, so that a saved line is seen at once. What only a whole build has, the search and
 * the lists for integrators, is built when it is asked for. `dir` is an empty folder.
 */
export function previewSite(dir: string, progress: Progress): PreviewSite {
  const files = join(dir, 'files')
  const whole = join(dir, 'whole')
  mkdirSync(files)
  let now: { shown: Shown; input: SiteInput; render: RenderPage; paths: string } | undefined
  let built: { of: Shown; done: Promise<void> } | undefined

  /** Astro knows the paths that it was opened with, and no others. */
  const open = async (input: SiteInput, paths: string): Promise<RenderPage> => {
    if (now?.paths === paths) {
      handOver(input)
      return now.render
    }
    progress.step(`${input.pages.length} pages, each when it is looked at`)
    const work = newWorkDir(input.machine)
    try {
      return await openPages(input, work)
    } finally {
      rmSync(work, { recursive: true, force: true })
    }
  }
  const buildWhole = async (shown: Shown): Promise<void> => {
    const made = await buildSite({ ...shown, outDir: whole, zip: false, preview: true, progress })
    if ('refused' in made) throw new Error(made.refused)
    progress.done('search and lists are of the files as they are now')
  }

  return {
    isEmpty: () => now === undefined,
    async show(shown) {
      const { machine } = shown
      const unspoken = unspokenLanguages(machine)
      if (unspoken !== undefined) return { refused: unspoken }
      // A whole build hands its own machine over.
      await built?.done.catch(() => undefined)
      const written =
        now && hasSameFiles(now.shown.machine, machine) ? { version: now.input.release.assets, broken: [] } : await writeAssets(machine, files)
      if (written.broken.length > 0) return { refused: written.broken.join('\n') }
      const input = siteInput({ ...shown, preview: true }, written.version)
      const paths = JSON.stringify(input.pages)
      now = { shown, input, render: await open(input, paths), paths }
      return undefined
    },
    async at(path) {
      if (!now) return undefined
      if (now.input.pages.some((page) => page.path === path)) return { html: await now.render(path) }
      const file = fileIn(files, path)
      if (file !== undefined) return { file }
      if (!ofWholeBuild.test(path)) return undefined
      if (built?.of !== now.shown) built = { of: now.shown, done: buildWhole(now.shown) }
      await built.done
      const made = fileIn(whole, path)
      return made === undefined ? undefined : { file: made }
    },
  }
}

/** What is made of all pages together: the search, and the lists at the root of the site. */
const ofWholeBuild = /^(search\/.*|[\w-]+\.(json|csv)|SHA256SUMS)$/

function fileIn(dir: string, path: string): string | undefined {
  const file = resolve(dir, path)
  return file.startsWith(dir + sep) && statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined
}

/** Whether styles, drawings and pictures are as before: at most the texts of pages differ, and they show the same pictures. */
function hasSameFiles(before: Machine, after: Machine): boolean {
  const filesOf = ({ inputs, references }: Machine) => [
    inputs.flatMap(({ path, sha256 }) => (path.endsWith('.mdx') ? [] : [`${path} ${sha256}`])).sort(),
    [...new Set(references.flatMap(({ kind, id }) => (kind === 'image' ? [id] : [])))].sort(),
  ]
  return JSON.stringify(filesOf(before)) === JSON.stringify(filesOf(after))
}
