import { type ChildProcess, spawn } from 'node:child_process'
import { mkdirSync, statSync } from 'node:fs'
import { join, resolve, sep } from 'node:path'
import type { Machine } from '../model/machine.ts'
import { writeAssets } from '../site/assets.ts'
import { handOver, type SiteInput } from '../site/handover.ts'
import type { SitePage } from '../site/site-map.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { openViews, type Views } from './kept-views.ts'
import { packageDir } from './paths.ts'
import type { Progress } from './progress.ts'
import type { Sound } from './release-inputs.ts'
import { siteInput, unspokenLanguages } from './write-pages.ts'

export interface PreviewSite {
  /** Shows another state of the machine from now on; what keeps it from being shown leaves the one before. */
  show(shown: Sound): Promise<{ refused: string } | undefined>
  /** The page or file at a path of the site; undefined where there is none. */
  at(path: string): Promise<{ html: string } | { file: string } | { later: string } | undefined>
  /** Whether anything is shown yet. */
  isEmpty(): boolean
  close(): void
}

/**
 * A site of which each page is made when it is looked at, so that a saved line is seen at once. What only a whole build has, the search and
 * the lists for integrators, is built beside it by a process of its own, `fettle build` with `args`, when it is asked for.
 * Until the first is there it comes later, and `ready` is called when it has come; after that the one before is given until a new one is there.
 * `dir` is an empty folder. `kept`: what earlier builds have kept; undefined: trust nothing that is kept.
 */
export function previewSite(dir: string, args: readonly string[], kept: KeptFiles | undefined, progress: Progress, ready: () => void): PreviewSite {
  const files = join(dir, 'files')
  const whole = join(dir, 'whole')
  mkdirSync(files)
  let now: { shown: Sound; input: SiteInput; pages: ReadonlyMap<string, SitePage> } | undefined
  let views: Views | undefined
  let building: ChildProcess | undefined
  let triedFor: Sound | undefined

  const buildWhole = (of: Sound) => {
    const child = spawn(process.execPath, [join(packageDir, 'src/cli/fettle.ts'), 'build', ...args, '--out', whole, '--no-zip'], { stdio: 'ignore' })
    building = child
    const finish = (isBuilt: boolean) => {
      const isFirst = triedFor === undefined
      building = undefined
      triedFor = of
      progress.done(isBuilt ? 'the search and the lists are built' : 'the search and the lists could not be built: `fettle build` says why')
      if (isFirst) ready()
    }
    child.once('error', () => finish(false)).once('close', (code) => finish(code === 0))
  }

  return {
    isEmpty: () => now === undefined,
    async show(shown) {
      const { machine } = shown
      const unspoken = unspokenLanguages(machine)
      if (unspoken !== undefined) return { refused: unspoken }
      const written =
        now && hasSameFiles(now.shown.machine, machine) ? { version: now.input.release.assets, broken: [] } : await writeAssets(machine, files, kept)
      if (written.broken.length > 0) return { refused: written.broken.join('\n') }
      const input = siteInput({ ...shown, preview: true }, written.version)
      views ??= await openViews(kept === undefined, progress)
      handOver(input)
      now = { shown, input, pages: new Map(input.pages.map((page) => [page.path, page])) }
      return undefined
    },
    async at(path) {
      if (!now) return undefined
      const page = now.pages.get(path)
      if (page && views) return { html: await views.render(page) }
      const file = fileIn(files, path)
      if (file !== undefined) return { file }
      if (!ofWholeBuild.test(path)) return undefined
      if (triedFor !== now.shown && !building) buildWhole(now.shown)
      if (!triedFor) return { later: 'the search is being built' }
      const made = fileIn(whole, path)
      return made === undefined ? undefined : { file: made }
    },
    close() {
      building?.kill()
      views?.close()
    },
  }
}

/** What is made of all pages together. */
const ofWholeBuild = /^(search\/.*|links\.(csv|json)|data\.json)$/

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
