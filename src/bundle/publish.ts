import { lstatSync, mkdirSync, readdirSync, readFileSync, renameSync, rmdirSync, rmSync } from 'node:fs'
import { basename, dirname, isAbsolute, join, relative, resolve } from 'node:path'
import { listFiles } from './files.ts'
import { manifestName, parseManifest, sumsName } from './manifest.ts'

export type Published = { published: true } | { refused: string }

/**
 * Puts a finished build in the place of an earlier one. The earlier one is moved aside, the new one moved in, and only
 * then is the earlier one removed; `recover` brings it back when the process is killed between the two moves.
 *
 * Refuses, and changes nothing, when the place holds anything but an earlier build: a link, a file, a folder without
 * our manifest, or a build to which someone added files of their own. Both folders must be on one file system.
 */
export function publish(stagedDir: string, targetDir: string): Published {
  const staged = resolve(stagedDir)
  const target = resolve(targetDir)
  if (contains(target, staged) || contains(staged, target)) return { refused: `\`${staged}\` and \`${target}\` lie inside each other` }
  const unfinished = whyNoBuild(staged)
  if (unfinished !== undefined) return { refused: `the new build in \`${staged}\` is not finished: ${unfinished}` }
  const recovered = recover(target)
  if ('refused' in recovered) return recovered
  const objection = whyKeep(target)
  if (objection !== undefined) return { refused: objection }
  const { earlier } = namesBeside(target)
  try {
    mkdirSync(dirname(target), { recursive: true })
    if (isEmptyFolder(target)) rmdirSync(target)
    if (kindOf(target) === 'folder') renameSync(target, earlier)
    renameSync(staged, target)
  } catch (error) {
    if (kindOf(target) === 'nothing' && kindOf(earlier) === 'folder') renameSync(earlier, target)
    return { refused: `cannot put the new build into \`${target}\`: ${reason(error)}` }
  }
  discardEarlier(target)
  return { published: true }
}

/**
 * Clears up after a publication that was killed: brings back the earlier build if its place is empty, removes what is
 * left of it if the new one is in place. Call it before a build starts, so that also a build that fails finds the earlier one.
 */
export function recover(targetDir: string): { recovered: boolean } | { refused: string } {
  const target = resolve(targetDir)
  const { earlier, leaving } = namesBeside(target)
  for (const path of [earlier, leaving]) {
    const kind = kindOf(path)
    const fault = kind === 'folder' && !isEmptyFolder(path) ? whyNoBuild(path) : undefined
    if (kind === 'other' || fault !== undefined) return { refused: `\`${path}\` is in the way: ${fault ?? 'it is not a folder'}` }
  }
  try {
    if (kindOf(earlier) === 'folder' && (kindOf(target) === 'nothing' || isEmptyFolder(target))) {
      if (isEmptyFolder(target)) rmdirSync(target)
      renameSync(earlier, target)
      return { recovered: true }
    }
    if (whyNoBuild(target) === undefined) discardEarlier(target)
    return { recovered: false }
  } catch (error) {
    return { refused: `cannot bring back the earlier build from \`${earlier}\`: ${reason(error)}` }
  }
}

/** Beside the target, hence on its file system. */
function namesBeside(target: string): { earlier: string; leaving: string } {
  const beside = (word: string) => join(dirname(target), `.${basename(target)}.${word}`)
  return { earlier: beside('earlier'), leaving: beside('leaving') }
}

/**
 * Half a folder must never look like an earlier build that can be brought back: so it changes its name before the first
 * file goes. The manifest goes last: what a killed removal leaves is still known as ours.
 */
function discardEarlier(target: string): void {
  const { earlier, leaving } = namesBeside(target)
  try {
    remove(leaving)
    if (kindOf(earlier) === 'nothing') return
    renameSync(earlier, leaving)
    remove(leaving)
  } catch {
    // A file of the earlier build is held open, on Windows by a reader: the new build is in place, the next one clears up.
  }
}

function remove(dir: string): void {
  if (kindOf(dir) === 'nothing') return
  for (const name of readdirSync(dir)) if (name !== manifestName) rmSync(join(dir, name), { recursive: true, force: true })
  rmSync(dir, { recursive: true, force: true })
}

/** Files that a file manager leaves in any folder that someone looked into. */
const leftByFileManagers = /(^|\/)(\.DS_Store|Thumbs\.db|desktop\.ini)$/

/** Why the target must not be replaced; undefined when it is absent, empty or an earlier build. */
function whyKeep(target: string): string | undefined {
  const kind = kindOf(target)
  if (kind === 'nothing' || isEmptyFolder(target)) return undefined
  if (kind === 'other') return `\`${target}\` is a file or a link, not a folder: choose another place, or remove it yourself`
  const fault = whyNoBuild(target)
  if (fault !== undefined)
    return `\`${target}\` is not an earlier build and is left as it is: ${fault}. Choose another folder, or empty this one yourself`
  const [first, ...more] = filesOfOthers(target)
  if (first === undefined) return undefined
  const others = more.length === 0 ? '' : ` and ${more.length} more`
  return `\`${target}\` holds \`${first}\`${others}, which no build wrote: move that elsewhere first`
}

/** What lies in an earlier build without being part of it. */
function filesOfOthers(dir: string): string[] {
  const parsed = parseManifest(readFileSync(join(dir, manifestName), 'utf8'))
  if ('problem' in parsed) return []
  const known = new Set([manifestName, sumsName, ...parsed.manifest.files.map(({ path }) => path)])
  return listFiles(dir)
    .map(({ path }) => path)
    .filter((path) => !known.has(path) && !leftByFileManagers.test(path))
}

function whyNoBuild(dir: string): string | undefined {
  try {
    const parsed = parseManifest(readFileSync(join(dir, manifestName), 'utf8'))
    return 'problem' in parsed ? parsed.problem : undefined
  } catch (error) {
    return `its \`${manifestName}\` cannot be read (${reason(error)})`
  }
}

function kindOf(path: string): 'nothing' | 'folder' | 'other' {
  const found = lstatSync(path, { throwIfNoEntry: false })
  if (!found) return 'nothing'
  return found.isDirectory() ? 'folder' : 'other'
}

function isEmptyFolder(path: string): boolean {
  return kindOf(path) === 'folder' && readdirSync(path).length === 0
}

function contains(outer: string, inner: string): boolean {
  const path = relative(outer, inner)
  return !/^\.\.([\\/]|$)/.test(path) && !isAbsolute(path)
}

function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
