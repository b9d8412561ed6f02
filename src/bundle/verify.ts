import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { compare } from '../source/place.ts'
import type { ZipEntry } from '../source/zip-entries.ts'
import { listFiles, sha256 } from './files.ts'
import { type Manifest, manifestName, parseManifest, sumsName } from './manifest.ts'
import { withZip } from './read-zip.ts'
import { parseSums, sumsText } from './sums.ts'

export interface VerifyResult {
  /** Whose manual it is and its build check value, as the manifest says; absent when that could not be read. */
  machine?: Record<string, unknown>
  checkValue?: string
  /** Paths in the bundle, each list in code-unit order. */
  changed: string[]
  missing: string[]
  added: string[]
  /** Why the files could not be compared: then the lists say nothing. */
  unreadable?: string
}

/** The files of a bundle, wherever they are. */
interface Contents {
  names: readonly string[]
  /** Undefined for what is no plain, whole file: a link, damaged data, or two entries of one name. */
  read(name: string): Uint8Array | undefined
}

/**
 * Compares a built folder or its zip with the manifest inside it. Finds what was changed by accident or by an edit of
 * the pages; someone who rewrites manifest and sums as well is found only by comparing the check value with another copy.
 * Nothing is unpacked to disk.
 */
export async function verify(path: string): Promise<VerifyResult> {
  try {
    const found = statSync(path, { throwIfNoEntry: false })
    if (!found) return unreadable('there is no such file or folder')
    if (found.isDirectory()) return verifyContents(folderContents(path))
    if (!found.isFile()) return unreadable('neither a folder nor a zip file')
    const reading = withZip(path, (entries) => verifyContents(zipContents(entries)))
    return 'problem' in reading ? unreadable(reading.problem) : reading.result
  } catch (error) {
    return unreadable(`cannot be read: ${error instanceof Error ? error.message : String(error)}`)
  }
}

function unreadable(reason: string): VerifyResult {
  return { changed: [], missing: [], added: [], unreadable: reason }
}

function verifyContents({ names, read }: Contents): VerifyResult {
  if (!names.includes(manifestName)) return unreadable(`not a built manual: it holds no \`${manifestName}\``)
  const written = read(manifestName)
  if (!written) return unreadable(`\`${manifestName}\` is there twice, is a link or is damaged`)
  const parsed = parseManifest(new TextDecoder().decode(written))
  if ('problem' in parsed) return unreadable(parsed.problem)

  const { manifest } = parsed
  const changed = new Set<string>()
  const expected = expectedFiles(manifest, sha256(written), names.includes(sumsName) ? read(sumsName) : undefined, changed)
  const here = new Set(names)
  for (const [path, hash] of expected) {
    if (!here.has(path)) continue
    const content = read(path)
    if (!content || sha256(content) !== hash) changed.add(path)
  }
  const listed = [...expected.keys(), sumsName, manifestName]
  const known = new Set(listed)
  return {
    machine: manifest.machine,
    checkValue: manifest.checkValue,
    changed: [...changed].filter((path) => here.has(path)).sort(compare),
    missing: [...known].filter((path) => !here.has(path)).sort(compare),
    added: [...here].filter((path) => !known.has(path)).sort(compare),
  }
}

/**
 * Path -> hash of every file but the two lists. The manifest and the sums vouch for each other: when the sums do not
 * know this manifest, it was edited, and the sums are what the files are held against.
 */
function expectedFiles(manifest: Manifest, manifestHash: string, sumsFile: Uint8Array | undefined, changed: Set<string>): Map<string, string> {
  const fromManifest = new Map(manifest.files.map(({ path, sha256 }) => [path, sha256]))
  const text = sumsFile && new TextDecoder().decode(sumsFile)
  const sums = text === undefined ? undefined : parseSums(text)
  const vouched = sums?.get(manifestName)
  if (!sums || vouched === undefined) {
    changed.add(sumsName)
    return fromManifest
  }
  if (vouched !== manifestHash) {
    changed.add(manifestName)
    sums.delete(manifestName)
    return sums
  }
  if (text !== sumsText([...manifest.files, { path: manifestName, sha256: manifestHash }])) changed.add(sumsName)
  return fromManifest
}

function folderContents(dir: string): Contents {
  const plain = new Map(listFiles(dir).map((file) => [file.path, file.plain]))
  return {
    names: [...plain.keys()],
    read: (name) => (plain.get(name) ? readFileSync(join(dir, name)) : undefined),
  }
}

/** Names are relative to the folder in the zip that holds the manifest, so what lies outside it begins with `../`. */
function zipContents(all: readonly ZipEntry[]): Contents {
  const entries = all.filter(({ name }) => !name.endsWith('/'))
  const root = entries.map(({ name }) => /^([^/]+\/)?manifest\.json$/.exec(name)?.[1]).find((folder) => folder !== undefined) ?? ''
  const byName = new Map<string, ZipEntry[]>()
  for (const entry of entries) {
    const name = entry.name.startsWith(root) ? entry.name.slice(root.length) : `../${entry.name}`
    byName.set(name, [...(byName.get(name) ?? []), entry])
  }
  return {
    names: [...byName.keys()],
    read(name) {
      const [entry, ...more] = byName.get(name) ?? []
      return more.length === 0 ? entry?.read() : undefined
    },
  }
}
