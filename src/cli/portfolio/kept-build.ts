import { hash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { z } from 'zod'
import { sumsName } from '../../bundle/manifest.ts'
import { verify } from '../../bundle/verify.ts'
import { readKept, writeKept } from '../../load/kept-json.ts'
import { coveredFolders, type Folders, hashedFiles, keyOf, toolHash } from '../kept-key.ts'
import type { Options } from '../options.ts'
import { openFolders } from '../paths.ts'
import { releaseInputs, type Sound } from '../release-inputs.ts'
import type { Outcome, Told } from './outcome.ts'

export interface BuildKeeper {
  /** The folders to build from. */
  folders: Folders
  /** The build in place, where every file is what it was when it was made; nothing else of Fettle is loaded for that. */
  unchanged(): Promise<Outcome | undefined>
  /** The build in place, where all that differs from when it was made is not seen in it. */
  unchangedAs(sound: Sound): Promise<Outcome | undefined>
  /** Keeps of what the build in place was made, unless it has read what the key does not cover, or a file has changed meanwhile. */
  keep(sound: Sound, told: Told): void
}

/** Folders of the sources that a build never runs. */
export const unusedByBuild: ReadonlySet<string> = new Set(['start'])

const record = z.object({
  format: z.literal('fettle-built-1'),
  /** Hash of everything that was there to read, and of the day. */
  key: z.string(),
  /** Hash of what the site is made of. */
  made: z.string(),
  /** Hash of the bundle's SHA256SUMS, and of its zip. */
  sums: z.string(),
  zip: z.string().optional(),
  told: z.object({
    ...{ model: z.string(), serial: z.string(), pages: z.number(), checkValue: z.string() },
    ...{ errors: z.number(), warnings: z.number(), notes: z.number() },
  }),
})

/**
 * Keeps beside a build, in `.<name>.built.json`, of what it was made. It holds no path and no time, so it can go along with the
 * build to another computer; it may be deleted, broken or impossible to write: then the machine is built.
 */
export function buildKeeper(options: Options, outDir: string, tool = toolHash(unusedByBuild)): BuildKeeper | undefined {
  const [folder = '.'] = options.words
  const { folders, isCovered } = coveredFolders(openFolders(folder, options))
  const asked = ['build', options.get('serial') ?? null, options.has('no-zip'), basename(outDir)]
  const keyNow = ({ machine, shared }: Folders) => keyOf([machine, shared], asked, tool)
  const key = keyNow(folders)
  if (key === undefined) return undefined
  const file = join(dirname(outDir), `.${basename(outDir)}.built.json`)
  const known = record.safeParse(readKept(file)).data
  const madeOf = (sound: Sound) => hash('sha256', JSON.stringify([tool, process.version, asked, hashedFiles(folders.machine), releaseInputs(sound)]))
  const inPlace = async (): Promise<Outcome | undefined> => {
    if (!known || !(await isWhole(outDir, known))) return undefined
    return { state: 'unchanged', code: 0, ...known.told }
  }
  return {
    folders,
    unchanged: async () => (known?.key === key ? await inPlace() : undefined),
    async unchangedAs(sound) {
      const outcome = known && isCovered() && known.made === madeOf(sound) ? await inPlace() : undefined
      if (outcome) writeKept(file, { ...known, key })
      return outcome
    },
    keep(sound, told) {
      if (!isCovered() || keyNow(openFolders(folder, options)) !== key) return
      writeKept(file, { format: 'fettle-built-1', key, made: madeOf(sound), ...hashesOf(outDir), told } satisfies z.infer<typeof record>)
    },
  }
}

/** Whether a bundle is the one that was kept, and each of its files and its zip are what they were. */
async function isWhole(outDir: string, { sums, zip }: z.infer<typeof record>): Promise<boolean> {
  try {
    const now = hashesOf(outDir)
    if (now.sums !== sums || now.zip !== zip) return false
  } catch {
    return false // It is gone or cannot be read, and the build tells what stands in its place.
  }
  const { changed, missing, added, unreadable } = await verify(outDir)
  return unreadable === undefined && changed.length + missing.length + added.length === 0
}

function hashesOf(outDir: string): { sums: string; zip?: string } {
  const zip = `${outDir}.zip`
  const of = (path: string) => hash('sha256', readFileSync(path))
  return { sums: of(join(outDir, sumsName)), ...(existsSync(zip) ? { zip: of(zip) } : {}) }
}
