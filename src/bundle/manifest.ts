import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { compare } from '../source/place.ts'
import { listPlainFiles, sha256 } from './files.ts'
import { sumsText } from './sums.ts'

export const manifestName = 'manifest.json'
export const sumsName = 'SHA256SUMS'
const format = 'fettle-manifest-1'

const hash = z.string().regex(/^[0-9a-f]{64}$/, 'not a SHA-256')

const manifestSchema = z.object({
  format: z.literal(format),
  /** Name and version of the program that built the bundle. */
  tool: z.string(),
  /** What the bundle is about: id, model, serial, revision … */
  machine: z.record(z.string(), z.unknown()),
  /** The data files that the pages were made from. */
  data: z.array(z.object({ file: z.string(), sha256: hash, revision: z.string().optional() })),
  /** How many findings the check had. */
  check: z.object({ errors: z.number(), warnings: z.number(), notes: z.number() }),
  checkValue: z.string(),
  /** Every file of the bundle but `manifest.json` and `SHA256SUMS`, in code-unit order of their paths. Sizes in bytes. */
  files: z.array(z.object({ path: z.string(), size: z.number(), sha256: hash })),
})

export type Manifest = z.infer<typeof manifestSchema>

/** What the build knows of itself; the rest is read from its folder. */
export type ManifestIdentity = Omit<Manifest, 'format' | 'files'>

/** Writes `manifest.json` and `SHA256SUMS` for a finished folder. Throws if it holds a link. */
export function writeManifest(dir: string, { tool, machine, data, check, checkValue }: ManifestIdentity): void {
  const files = listPlainFiles(dir)
    .filter((path) => path !== manifestName && path !== sumsName)
    .map((path) => {
      const content = readFileSync(join(dir, path))
      return { path, size: content.length, sha256: sha256(content) }
    })
  const manifest: Manifest = {
    format,
    tool,
    machine: sortKeys(machine),
    data: data.toSorted((a, b) => compare(a.file, b.file)),
    check: { errors: check.errors, warnings: check.warnings, notes: check.notes },
    checkValue,
    files,
  }
  const text = `${JSON.stringify(manifest, null, 2)}\n`
  writeFileSync(join(dir, manifestName), text)
  writeFileSync(join(dir, sumsName), sumsText([...files, { path: manifestName, sha256: sha256(text) }]))
}

/** Reads the text of a `manifest.json`, or says what is wrong with it. */
export function parseManifest(text: string): { manifest: Manifest } | { problem: string } {
  const json = parseJson(text)
  if (json === undefined) return { problem: `\`${manifestName}\` is not JSON` }
  const written = z.object({ format: z.string() }).safeParse(json)
  if (!written.success) return { problem: `\`${manifestName}\` does not say its format, so it is not one of ours` }
  if (written.data.format !== format) return { problem: `\`${manifestName}\` has the format \`${written.data.format}\`; known here is \`${format}\`` }
  const parsed = manifestSchema.safeParse(json)
  if (parsed.success) return { manifest: parsed.data }
  const [issue] = parsed.error.issues
  return { problem: `\`${manifestName}\` says it has the format \`${format}\` but has not: at \`${issue?.path.join('.')}\`, ${issue?.message}` }
}

/**
 * The build check value, 12 hexadecimal digits in groups of 4, short enough to be read out over the telephone.
 *
 * It is taken over what goes into a build (the path and hash of each input file, the version of the tool, the serial
 * number), not over what comes out: the about page prints it, so a value over the pages would have to contain itself.
 * A build is repeatable, so equal inputs mean equal pages. Whether a copy still is what was built is for `verify` to say.
 * The order of the inputs does not matter.
 */
export function checkValue(inputs: readonly { path: string; sha256: string }[]): string {
  const lines = inputs.map(({ path, sha256 }) => JSON.stringify([path, sha256])).sort(compare)
  return sha256(lines.join('\n'))
    .slice(0, 12)
    .replace(/.{4}(?=.)/g, '$& ')
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined // the caller says so in its own words
  }
}

function sortKeys(record: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record).sort(([a], [b]) => compare(a, b)))
}
