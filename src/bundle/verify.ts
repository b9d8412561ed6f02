import { compare } from '../source/place.ts'
import { type Contents, withContents } from './contents.ts'
import { sha256 } from './files.ts'
import { type Manifest, manifestName, parseManifest, sumsName } from './manifest.ts'
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

/**
 * Compares a built folder or its zip with the manifest inside it. Finds what was changed by accident or by an edit of
 * the pages; someone who rewrites manifest and sums as well is found only by comparing the check value with another copy.
 * Nothing is unpacked to disk.
 */
export async function verify(path: string): Promise<VerifyResult> {
  const reading = withContents(path, verifyContents)
  return 'problem' in reading ? unreadable(reading.problem) : reading.result
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
